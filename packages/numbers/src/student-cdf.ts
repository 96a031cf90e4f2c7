import { betaCdf } from './beta-cdf.ts';

/**
 * Distribution function of Student's t distribution.
 *
 * @param t - any number, may be infinite
 * @param degrees - degrees of freedom, > 0
 * @returns P(T <= t)
 * @throws RangeError when t is not a number or the degrees are not positive
 * @source Abramowitz & Stegun 26.7.1 by way of the incomplete beta function
 * @example studentCdf(2.306, 8) // 0.975
 */
export function studentCdf(t: number, degrees: number): number {
  if (Number.isNaN(t) || !(degrees > 0)) throw new RangeError('Student needs a number and positive degrees.');
  const tail =
    Math.abs(t) === Number.POSITIVE_INFINITY ? 0 : betaCdf(degrees / (degrees + t * t), degrees / 2, 0.5) / 2;
  return t > 0 ? 1 - tail : tail;
}
