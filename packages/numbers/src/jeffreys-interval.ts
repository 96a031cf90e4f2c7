import { betaQuantile } from './beta-quantile.ts';
import type { Interval } from './wilson-interval.ts';

/**
 * Jeffreys interval for a share: equal tails of Beta(x + 1/2, n - x + 1/2), with the edge itself at 0 and n.
 *
 * @param successes - count, 0..n
 * @param n - trials, at least 1
 * @param level - confidence, strictly between 0 and 1
 * @throws RangeError when the counts are not whole numbers with 0 <= successes <= n, or n is 0
 * @source Brown, Cai & DasGupta 2001, Statistical Science 16:101, section 3.1.3
 * @example jeffreysInterval(8, 10) // { low: 0.4972, high: 0.9560 }
 */
export function jeffreysInterval(successes: number, n: number, level = 0.95): Interval {
  if (!Number.isInteger(successes) || !Number.isInteger(n) || n < 1 || successes < 0 || successes > n) {
    throw new RangeError('A share needs whole counts with 0 <= successes <= n and n >= 1.');
  }
  if (!(level > 0 && level < 1)) throw new RangeError('A level lies strictly between 0 and 1.');
  const tail = (1 - level) / 2;
  const [a, b] = [successes + 0.5, n - successes + 0.5];
  return {
    low: successes === 0 ? 0 : betaQuantile(tail, a, b),
    high: successes === n ? 1 : betaQuantile(1 - tail, a, b),
  };
}
