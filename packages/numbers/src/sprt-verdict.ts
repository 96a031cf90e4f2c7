import { sprtCounts } from './sprt-counts.ts';
import type { SprtPlan } from './sprt-plan.ts';

export type SprtVerdict = 'pass' | 'fail' | 'undecided';

/**
 * Where a sequential test stands after so many trials. It looks at the totals only: ask it at each point where the
 * test may stop and keep the first decision.
 *
 * @param plan - from `sprtPlan`
 * @param successes - whole number, 0..trials
 * @param trials - whole number >= 0
 * @throws RangeError when the counts are not whole or successes exceed trials
 * @source Wald 1947, section 5.3
 * @example sprtVerdict(sprtPlan({ p0: 0.5, p1: 0.8, alpha: 0.1, beta: 0.1 }), 9, 10) // 'pass'
 */
export function sprtVerdict(plan: SprtPlan, successes: number, trials: number): SprtVerdict {
  const { passAtLeast, failAtMost } = sprtCounts(plan, trials);
  if (!Number.isInteger(successes) || successes < 0 || successes > trials) {
    throw new RangeError('Successes are a whole number from 0 to the trials.');
  }
  if (passAtLeast !== null && successes >= passAtLeast) return 'pass';
  return failAtMost !== null && successes <= failAtMost ? 'fail' : 'undecided';
}
