export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** The value that a share of the readings does not exceed. */
export const quantile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))] ??
  Number.NaN;

export async function timed(act: () => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await act();
  return performance.now() - begun;
}

/**
 * Times two things in turns, so that what else the machine does falls on both; the first tenth warms up and is not
 * counted. @returns milliseconds of each
 */
export async function inTurns(
  n: number,
  one: () => Promise<unknown>,
  other: () => Promise<unknown>,
): Promise<{ one: number[]; other: number[] }> {
  const found = { one: [] as number[], other: [] as number[] };
  for (let at = -Math.ceil(n / 10); at < n; at += 1) {
    const [a, b] = [await timed(one), await timed(other)];
    if (at < 0) continue;
    found.one.push(a);
    found.other.push(b);
  }
  return found;
}
