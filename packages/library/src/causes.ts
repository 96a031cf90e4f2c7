import { faceCauses } from './causes/face.ts';
import { pathCauses } from './causes/path.ts';
import { pivotBackCauses } from './causes/pivot-back.ts';
import { pivotDownCauses } from './causes/pivot-down.ts';
import { pivotHeightCauses } from './causes/pivot-height.ts';
import { releaseCauses } from './causes/release.ts';
import { ballAndStanceCauses } from './causes/set-up-ball.ts';
import { handsAndHipsCauses } from './causes/set-up-hands.ts';
import { surroundingCauses } from './causes/surroundings.ts';
import type { Cause } from './types.ts';

/** Every built-in cause, in the order of the trade: surroundings, set-up, pivot, arc, face. */
export const causes: readonly Cause[] = [
  ...surroundingCauses,
  ...handsAndHipsCauses,
  ...ballAndStanceCauses,
  ...pivotBackCauses,
  ...pivotDownCauses,
  ...pivotHeightCauses,
  ...releaseCauses,
  ...pathCauses,
  ...faceCauses,
];

const byId = new Map(causes.map((cause) => [cause.id, cause]));

/** @throws RangeError on an unknown cause */
export const causeById = (id: string): Cause => {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`No cause is called "${id}".`);
  return found;
};
