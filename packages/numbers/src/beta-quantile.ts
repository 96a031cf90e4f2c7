import { betaCdf } from './beta-cdf.ts';
import { bisect } from './bisect.ts';

/**
 * Quantile of the Beta distribution.
 *
 * @param p - probability, 0..1
 * @param a - > 0
 * @param b - > 0
 * @returns the share below which p lies; absolute error below 1e-11
 * @throws RangeError when p lies outside 0..1 or a or b is not positive
 * @source inversion of the distribution function by halving
 * @example betaQuantile(0.5, 1, 1) // 0.5
 */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError('A probability lies between 0 and 1.');
  if (p === 0 || p === 1) return p;
  return bisect((x) => betaCdf(x, a, b), p, 0, 1);
}
