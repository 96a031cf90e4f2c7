import type { Cause } from '@ballfirst/library/types';
import { drillEffect } from './drill-effect.ts';

/** A cause of the ranking: how likely it is, 0..1, and how heavily it weighs for the fault (3, 2 or 1). */
export type LikelyCause = { readonly id: string; readonly probability: number; readonly weight: number };

/** So many minutes of one drill in a session. */
export type Dose = { readonly drillId: string; readonly minutes: number };

/**
 * What a session promises: sum over causes of P w (1 - prod over drills of (1 - e)^(m / 15)).
 *
 * @param causes - those that count
 * @returns 0 up to the sum of P w
 * @source independent effects that add up in the log of what is left; the effects are common practice, no source
 */
export const benefitOf = (
  doses: readonly Dose[],
  likely: readonly LikelyCause[],
  causes: readonly Cause[],
): number => {
  let sum = 0;
  for (const { id, probability, weight } of likely) {
    const cause = causes.find((one) => one.id === id);
    if (cause === undefined) continue;
    const left = doses.reduce(
      (product, { drillId, minutes }) => product * (1 - drillEffect(drillId, cause)) ** (minutes / 15),
      1,
    );
    sum += probability * weight * (1 - left);
  }
  return sum;
};
