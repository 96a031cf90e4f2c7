import type { SprtPlan } from './sprt-plan.ts';

/** Successes that decide after so many trials; `null` where no count can decide yet. */
export type SprtCounts = { readonly passAtLeast: number | null; readonly failAtMost: number | null };

// A count exactly on a line decides; rounding may leave it this far off.
const slack = 1e-9;

/**
 * The counts at which a sequential test passes or fails after n trials.
 *
 * @param plan - from `sprtPlan`
 * @param trials - whole number >= 0
 * @throws RangeError when trials is not a whole number >= 0
 * @source Wald 1947, section 5.3 (acceptance and rejection numbers)
 * @example sprtCounts(sprtPlan({ p0: 0.5, p1: 0.8, alpha: 0.1, beta: 0.1 }), 10) // { passAtLeast: 9, failAtMost: 5 }
 */
export function sprtCounts(plan: SprtPlan, trials: number): SprtCounts {
  if (!Number.isInteger(trials) || trials < 0) throw new RangeError('Trials are a whole number from 0 up.');
  const pass = Math.ceil(plan.slope * trials + plan.passIntercept - slack);
  const fail = Math.floor(plan.slope * trials - plan.failIntercept + slack);
  return { passAtLeast: pass <= trials ? pass : null, failAtMost: fail >= 0 ? fail : null };
}
