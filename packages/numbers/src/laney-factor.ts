import type { CountedDay } from './ewma.ts';

/**
 * By how much shares vary from day to day beyond what their counts explain: the mean moving range of the standardised
 * shares over 1.128.
 *
 * @param days - in time order, at least two, each with n >= 1
 * @returns at least 1: less would only be luck
 * @throws RangeError on fewer than two days, counts that are none, or when all balls are alike
 * @source Laney 2002, Quality Engineering 14:531 (sigma z); 1.128 is d2 for ranges of two
 * @example laneyFactor([{ successes: 2, n: 10 }, { successes: 8, n: 10 }]) // 3.364
 */
export function laneyFactor(days: readonly CountedDay[]): number {
  if (days.length < 2) throw new RangeError('A day effect needs at least two days.');
  for (const [i, { successes, n }] of days.entries()) {
    if (!Number.isInteger(n) || n < 1 || !(successes >= 0 && successes <= n)) {
      throw new RangeError(`Day ${i + 1} has no share: ${successes} of ${n}.`);
    }
  }
  const total = days.reduce((sum, { n }) => sum + n, 0);
  const p = days.reduce((sum, { successes }) => sum + successes, 0) / total;
  if (p === 0 || p === 1) throw new RangeError('All balls are alike: there is nothing to compare.');
  const z = days.map(({ successes, n }) => (successes / n - p) / Math.sqrt((p * (1 - p)) / n));
  const ranges = z.slice(1).map((value, i) => Math.abs(value - (z[i] ?? value)));
  return Math.max(1, ranges.reduce((sum, range) => sum + range, 0) / ranges.length / 1.128);
}
