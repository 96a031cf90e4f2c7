import { betaQuantile } from './beta-quantile.ts';

/**
 * Quantile of Student's t distribution.
 *
 * @param p - probability, strictly between 0 and 1
 * @param degrees - degrees of freedom, > 0, need not be whole
 * @returns t; relative error below 1e-8
 * @throws RangeError when p or the degrees are out of range
 * @source t^2 / (t^2 + degrees) follows Beta(1/2, degrees / 2) (Abramowitz & Stegun 26.5.27)
 * @example studentQuantile(0.975, 8) // 2.306
 */
export function studentQuantile(p: number, degrees: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError('A quantile needs a probability strictly between 0 and 1.');
  if (!(degrees > 0)) throw new RangeError('Degrees of freedom are positive.');
  if (p < 0.5) return -studentQuantile(1 - p, degrees);
  const rest = betaQuantile(2 * (1 - p), degrees / 2, 0.5);
  return Math.sqrt(degrees * (1 / rest - 1));
}
