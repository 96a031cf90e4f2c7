import { arcCauses } from './causes/arc.ts';
import { pivotCauses } from './causes/pivot.ts';
import { setUpCauses } from './causes/set-up.ts';
import type { Cause } from './types.ts';

/** Every built-in cause, in the order of the trade: set-up, pivot, arc. */
export const causes: readonly Cause[] = [...setUpCauses, ...pivotCauses, ...arcCauses];

const byId = new Map(causes.map((cause) => [cause.id, cause]));

/** @throws RangeError on an unknown cause */
export const causeById = (id: string): Cause => {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`No cause is called "${id}".`);
  return found;
};
