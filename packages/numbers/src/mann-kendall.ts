import { checkFinite } from './check-finite.ts';
import { kendallTwoSided } from './kendall.ts';
import { normalCdf } from './normal-cdf.ts';

export type Trend = {
  /** Pairs that rise less pairs that fall. */
  readonly s: number;
  readonly variance: number;
  /** Corrected for continuity. */
  readonly z: number;
  readonly tau: number;
  /** Two-sided; exact up to ten values without ties, else normal. */
  readonly p: number;
  readonly exact: boolean;
};

/**
 * Whether values rise or fall with time, by the signs of all pairs.
 *
 * @param values - in time order, 3 to 2,000
 * @throws RangeError on too few or too many values, or one that is not finite
 * @source Mann 1945, Econometrica 13:245; Kendall 1975 (variance with ties)
 * @example mannKendall([9, 15, 19, 20, 45, 55, 78]).s // 21
 */
export function mannKendall(values: readonly number[]): Trend {
  checkFinite('values', values, 3);
  const n = values.length;
  if (n > 2000) throw new RangeError('A trend takes at most 2,000 values.');
  let s = 0;
  values.forEach((later, j) => {
    for (let i = 0; i < j; i += 1) s += Math.sign(later - (values[i] ?? later));
  });
  const ties = new Map<number, number>();
  for (const value of values) ties.set(value, (ties.get(value) ?? 0) + 1);
  const counted = (count: number) => count * (count - 1) * (2 * count + 5);
  const tied = [...ties.values()].reduce((sum, count) => sum + counted(count), 0);
  const variance = (counted(n) - tied) / 18;
  const z = variance === 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);
  const exact = n <= 10 && ties.size === n;
  return {
    s,
    variance,
    z,
    tau: (2 * s) / (n * (n - 1)),
    p: exact ? kendallTwoSided(n, s) : 2 * normalCdf(-Math.abs(z)),
    exact,
  };
}
