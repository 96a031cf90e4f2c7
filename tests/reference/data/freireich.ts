const relapse = (times: readonly number[]) => times.map((time) => ({ time, event: 'relapse' as const }));
const open = (times: readonly number[]) => times.map((time) => ({ time, event: null }));

export const treated = [
  ...relapse([6, 6, 6, 7, 10, 13, 16, 22, 23]),
  ...open([6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35]),
];
export const placebo = relapse([1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23]);
