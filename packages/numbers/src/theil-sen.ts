import { checkFinite } from './check-finite.ts';
import { kendallCritical } from './kendall.ts';
import { normalQuantile } from './normal-quantile.ts';
import { quantile } from './quantile.ts';
import type { Interval } from './wilson-interval.ts';

export type Slope = {
  readonly slope: number;
  /** Median of y less slope times median of t. */
  readonly intercept: number;
  /** Null where the count of values cannot exclude anything at this level. */
  readonly interval: Interval | null;
};

/**
 * A line through values that a few bad ones cannot turn: the median of the slopes of all pairs.
 *
 * @param t - times, at least two different ones, as many as `y`; at most 2,000
 * @param y - values
 * @param level - confidence of the interval, strictly between 0 and 1
 * @returns the interval is exact (Kendall) up to ten values, none under five, normal above ten
 * @throws RangeError on unequal lengths, a value that is not finite, or times that are all the same
 * @source Theil 1950; Sen 1968, Journal of the American Statistical Association 63:1379
 * @example theilSen([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78]).interval // 26/7 to 35/8
 */
export function theilSen(t: readonly number[], y: readonly number[], level = 0.95): Slope {
  checkFinite('times', t, 2);
  checkFinite('values', y, 2);
  if (t.length !== y.length) throw new RangeError('Each value needs its time.');
  if (t.length > 2000) throw new RangeError('A trend takes at most 2,000 values.');
  if (!(level > 0 && level < 1)) throw new RangeError('A level lies strictly between 0 and 1.');
  const slopes: number[] = [];
  t.forEach((later, j) => {
    for (let i = 0; i < j; i += 1) {
      const apart = later - (t[i] ?? later);
      if (apart !== 0) slopes.push(((y[j] ?? 0) - (y[i] ?? 0)) / apart);
    }
  });
  if (slopes.length === 0) throw new RangeError('All times are the same.');
  slopes.sort((a, b) => a - b);
  const slope = quantile(slopes, 0.5);
  return {
    slope,
    intercept: quantile(y, 0.5) - slope * quantile(t, 0.5),
    interval: intervalOf(slopes, t.length, level),
  };
}

/** The slopes that no two-sided test at this level rejects: all but so many at either end. */
function intervalOf(slopes: readonly number[], n: number, level: number): Interval | null {
  if (n < 5) return null;
  let cut: number;
  if (n <= 10) {
    const critical = kendallCritical(n, 1 - level);
    if (critical === null) return null;
    cut = (slopes.length - critical) / 2 + 1;
  } else {
    const sd = Math.sqrt((n * (n - 1) * (2 * n + 5)) / 18);
    cut = Math.floor((slopes.length - normalQuantile((1 + level) / 2) * sd) / 2) + 1;
  }
  const left = Math.max(1, Math.floor(cut));
  return { low: slopes[left - 1] ?? Number.NaN, high: slopes[slopes.length - left] ?? Number.NaN };
}
