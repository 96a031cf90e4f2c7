/** A sequential test of a share: pass when it looks like `p1` rather than `p0`. */
export type SprtQuestion = {
  /** Share not yet good enough, 0..1. */
  readonly p0: number;
  /** Share good enough, above p0. */
  readonly p1: number;
  /** Chance to pass someone at p0. */
  readonly alpha: number;
  /** Chance to fail someone at p1. */
  readonly beta: number;
};

/** Two parallel lines in (trials, successes): pass on or above `slope n + passIntercept`, fail on or below `slope n - failIntercept`. */
export type SprtPlan = {
  readonly slope: number;
  readonly passIntercept: number;
  readonly failIntercept: number;
};

/**
 * Wald's sequential probability ratio test for a share, as two straight lines.
 *
 * @param question - p0 < p1, alpha and beta, all strictly between 0 and 1, alpha + beta < 1
 * @returns slope and the two intercepts, in successes
 * @throws RangeError when the question cannot be asked
 * @source Wald 1947, Sequential Analysis, section 5.3
 * @example sprtPlan({ p0: 0.5, p1: 0.8, alpha: 0.1, beta: 0.1 }).slope // 0.660964
 */
export function sprtPlan({ p0, p1, alpha, beta }: SprtQuestion): SprtPlan {
  if (!(p0 > 0 && p0 < p1 && p1 < 1)) throw new RangeError('A sequential test needs 0 < p0 < p1 < 1.');
  if (!(alpha > 0 && beta > 0 && alpha + beta < 1)) throw new RangeError('The two risks must be small.');
  const perSuccess = Math.log((p1 * (1 - p0)) / (p0 * (1 - p1)));
  return {
    slope: Math.log((1 - p0) / (1 - p1)) / perSuccess,
    passIntercept: Math.log((1 - beta) / alpha) / perSuccess,
    failIntercept: Math.log((1 - alpha) / beta) / perSuccess,
  };
}
