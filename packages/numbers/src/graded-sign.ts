import { normalQuantile } from './normal-quantile.ts';

export type GradedSign = {
  /** How far the reading lies past the edge, in the sign's direction; negative: inside the band. */
  readonly past: number;
  /** Standard uncertainty of the reading, same unit, >= 0. */
  readonly u: number;
  /** Standard deviation between players, same unit, > 0. */
  readonly sd: number;
  /** Share of players with the cause who are past the edge, strictly between 0 and 1. */
  readonly sensitivity: number;
  /** Share of players without it who are not, strictly between 0 and 1. */
  readonly specificity: number;
};

/**
 * Log likelihood ratio of a measured sign: two normal populations placed so that the edge has the stated sensitivity
 * and specificity, both widened by the doubt of the reading. As the doubt grows the answer goes to zero.
 *
 * @returns natural logarithm of the ratio, not clipped
 * @throws RangeError when a share is not strictly between 0 and 1, sd is not positive or u is negative
 * @source equal-variance normal model (Green & Swets 1966, chapter 3), derived here; see the worked values in the tests
 * @example Math.exp(gradedSignLogRatio({ past: 12, u: 9, sd: 20, sensitivity: 0.8, specificity: 0.9 })) // 4.254
 */
export function gradedSignLogRatio({ past, u, sd, sensitivity, specificity }: GradedSign): number {
  if (!(sd > 0) || !(u >= 0) || !Number.isFinite(past))
    throw new RangeError('A graded sign needs sd > 0, u >= 0.');
  const without = -normalQuantile(specificity) * sd;
  const having = normalQuantile(sensitivity) * sd;
  return ((having - without) * (past - (without + having) / 2)) / (sd * sd + u * u);
}
