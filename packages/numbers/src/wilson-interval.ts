import { normalQuantile } from './normal-quantile.ts';

export type Interval = { readonly low: number; readonly high: number };

/**
 * Wilson score interval for a share.
 *
 * @param successes - count, 0..n
 * @param n - trials, at least 1
 * @param level - confidence, strictly between 0 and 1
 * @returns low and high, 0..1
 * @throws RangeError when the counts are not whole numbers with 0 <= successes <= n, or n is 0
 * @source Wilson 1927; Newcombe 1998, Statistics in Medicine 17:857, method 3
 * @example wilsonInterval(8, 10) // { low: 0.4902, high: 0.9433 } to four places
 */
export function wilsonInterval(successes: number, n: number, level = 0.95): Interval {
  if (!Number.isInteger(successes) || !Number.isInteger(n) || n < 1 || successes < 0 || successes > n) {
    throw new RangeError('A share needs whole counts with 0 <= successes <= n and n >= 1.');
  }
  const z = normalQuantile((1 + level) / 2);
  const p = successes / n;
  const centre = p + (z * z) / (2 * n);
  const half = z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return {
    low: successes === 0 ? 0 : Math.max(0, (centre - half) / scale),
    high: successes === n ? 1 : Math.min(1, (centre + half) / scale),
  };
}
