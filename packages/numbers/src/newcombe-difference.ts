import { type Interval, wilsonInterval } from './wilson-interval.ts';

export type Counted = { readonly successes: number; readonly n: number };

/**
 * Interval for the difference of two independent shares, first minus second, by squares of the Wilson limits.
 *
 * @param first - counts, 0 <= successes <= n, n at least 1
 * @param second - the same
 * @param level - confidence, strictly between 0 and 1
 * @returns low and high, -1..1
 * @throws RangeError on counts that are none
 * @source Newcombe 1998, Statistics in Medicine 17:873, method 10
 * @example newcombeDifference({ successes: 56, n: 70 }, { successes: 48, n: 80 }) // { low: 0.0524, high: 0.3339 }
 */
export function newcombeDifference(first: Counted, second: Counted, level = 0.95): Interval {
  const a = wilsonInterval(first.successes, first.n, level);
  const b = wilsonInterval(second.successes, second.n, level);
  const p = first.successes / first.n;
  const q = second.successes / second.n;
  return {
    low: Math.max(-1, p - q - Math.hypot(p - a.low, b.high - q)),
    high: Math.min(1, p - q + Math.hypot(a.high - p, q - b.low)),
  };
}
