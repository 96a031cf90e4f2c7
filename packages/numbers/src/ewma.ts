import { checkFinite } from './check-finite.ts';

export type EwmaPoint = {
  readonly value: number;
  /** Standard deviation of the smoothed value at this point. */
  readonly sd: number;
};

const checkWeight = (lambda: number) => {
  if (!(lambda > 0 && lambda <= 1)) throw new RangeError('The weight of the newest value lies in 0..1.');
};

/**
 * Exponentially weighted moving average of single values, with the standard deviation that grows to its limit.
 *
 * @param values - in time order
 * @param lambda - weight of the newest value, 0 < lambda <= 1
 * @param start - value before the first
 * @param sd - standard deviation of one value, >= 0
 * @throws RangeError on a value that is not finite or a weight out of range
 * @source NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4
 * @example ewma([52, 47], 0.3, 50, 2.0539).at(-1)?.value // 49.52
 */
export function ewma(
  values: readonly number[],
  lambda: number,
  start: number,
  sd: number,
): readonly EwmaPoint[] {
  checkFinite('values', values);
  checkWeight(lambda);
  if (!Number.isFinite(start) || !(sd >= 0))
    throw new RangeError('A start and a standard deviation are needed.');
  let smooth = start;
  let variance = 0;
  return values.map((value) => {
    smooth = lambda * value + (1 - lambda) * smooth;
    variance = lambda ** 2 * sd ** 2 + (1 - lambda) ** 2 * variance;
    return { value: smooth, sd: Math.sqrt(variance) };
  });
}

export type CountedDay = { readonly successes: number; readonly n: number };

/**
 * Exponentially weighted moving average of shares whose counts differ: each day widens the limits by its own count.
 *
 * @param days - in time order, each with 0 <= successes <= n and n >= 1
 * @param lambda - weight of the newest day, 0 < lambda <= 1
 * @param p0 - the share it starts from, strictly between 0 and 1
 * @param dayEffect - factor on the standard deviation for what differs between days (see `laney-factor.ts`), >= 1
 * @throws RangeError on counts that are none or a number out of range
 * @source Hunter 1986 with Var = lambda^2 p q / n_i + (1 - lambda)^2 Var before; worked values in the tests
 * @example ewmaOfShares([{ successes: 6, n: 10 }], 0.3, 0.5) // [{ value: 0.53, sd: 0.04743 }]
 */
export function ewmaOfShares(
  days: readonly CountedDay[],
  lambda: number,
  p0: number,
  dayEffect = 1,
): readonly EwmaPoint[] {
  checkWeight(lambda);
  if (!(p0 > 0 && p0 < 1)) throw new RangeError('The first share lies strictly between 0 and 1.');
  if (!(dayEffect >= 1)) throw new RangeError('A day effect only widens the limits.');
  let smooth = p0;
  let variance = 0;
  return days.map(({ successes, n }, i) => {
    if (!Number.isInteger(n) || n < 1 || !(successes >= 0 && successes <= n)) {
      throw new RangeError(`Day ${i + 1} has no share: ${successes} of ${n}.`);
    }
    smooth = (lambda * successes) / n + (1 - lambda) * smooth;
    variance = (lambda ** 2 * dayEffect ** 2 * p0 * (1 - p0)) / n + (1 - lambda) ** 2 * variance;
    return { value: smooth, sd: Math.sqrt(variance) };
  });
}
