/** Steps that can be undone and done again; the newest stands last in `past`, the next to redo last in `future`. */
export type History<T> = { readonly past: readonly T[]; readonly future: readonly T[] };

const most = 100;

export const noHistory = { past: [], future: [] } as const;

export const remember = <T>({ past }: History<T>, now: T): History<T> => ({
  past: [...past, now].slice(-most),
  future: [],
});

type Moved<T> = { readonly history: History<T>; readonly now: T } | null;

export const goBack = <T>({ past, future }: History<T>, now: T): Moved<T> => {
  const before = past.at(-1);
  return before === undefined
    ? null
    : { now: before, history: { past: past.slice(0, -1), future: [...future, now] } };
};

export const goOn = <T>({ past, future }: History<T>, now: T): Moved<T> => {
  const after = future.at(-1);
  return after === undefined
    ? null
    : { now: after, history: { past: [...past, now], future: future.slice(0, -1) } };
};
