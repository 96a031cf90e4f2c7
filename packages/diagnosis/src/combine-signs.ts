import type { Evidence } from './evidence.ts';

/** Correlation between signs read from the same marks. Common practice, no source. */
const sharedCorrelation = 0.7;

/** Signs that agree: sum / (1 + (k - 1) r), but never less than the strongest of them alone. */
const agreeing = (ratios: readonly number[]): number => {
  const sum = ratios.reduce((a, b) => a + b, 0);
  return Math.max(0, ...ratios, sum / (1 + (ratios.length - 1) * sharedCorrelation));
};

/**
 * Log likelihood ratio of all signs of one cause. Signs that share marks are not counted twice; those for and those
 * against are joined apart, so that a sign which agrees can never weaken what is already known.
 *
 * @param evidence - the signs that were read or seen
 * @returns natural logarithm; 0 when there is none
 * @source effective number of equally correlated readings, k / (1 + (k - 1) r) (Kish 1965, design effect)
 */
export function combineSigns(evidence: readonly Evidence[]): number {
  const groups = new Map<string, { readonly pro: number[]; readonly contra: number[] }>();
  evidence.forEach(({ sign, logRatio }, i) => {
    const name = sign.shares ?? `alone ${i}`;
    const group = groups.get(name) ?? { pro: [], contra: [] };
    if (logRatio > 0) group.pro.push(logRatio);
    else group.contra.push(-logRatio);
    groups.set(name, group);
  });
  let total = 0;
  for (const { pro, contra } of groups.values()) total += agreeing(pro) - agreeing(contra);
  return total;
}
