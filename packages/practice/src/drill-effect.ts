import type { Cause } from '@ballfirst/library/types';

// A quarter of an hour of the first, second, third … drill of a cause: common practice, no source; later from data.
const byPreference = [0.5, 0.4, 0.3, 0.25];

/** Share of a cause that a quarter of an hour of a drill takes away, 0..1; 0 for a drill that is not for it. */
export const drillEffect = (drillId: string, cause: Pick<Cause, 'drills'>): number => {
  const preference = cause.drills.indexOf(drillId);
  return preference < 0 ? 0 : (byPreference[preference] ?? 0.2);
};
