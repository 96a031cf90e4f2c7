import { propagate } from '@ballfirst/numbers/propagate';
import { depthOf } from './depth.ts';
import { covarianceOf, newInputs } from './inputs.ts';
import type { Picture, Setting } from './marks.ts';
import type { PlacedMarks } from './placed-marks.ts';
import { addSight, hasScale } from './sight.ts';

/** Millimetres a pixel where the ankles stand, with its standard uncertainty, and what length it was taken from. */
export type Scale = {
  readonly from: 'club-at-address';
  readonly mmPerPx: number;
  readonly u: number;
};

/**
 * The scale of a face-on picture from the club at address (grip end and ball): about 6 % doubt, most of it in the
 * length of the club and the angle at which it is held.
 *
 * @returns null when the grip end or the ball is not marked at address
 * @source pinhole geometry of `focal-from-club.ts`; the club's length and lie are common practice, no source
 */
export function scaleOf(marks: PlacedMarks, picture: Picture, setting: Setting): Scale | null {
  if (!hasScale(marks, picture)) return null;
  const inputs = newInputs();
  const sight = addSight(inputs, marks, picture, setting);
  const ankle = depthOf('lead-ankle').mm;
  const { value, u } = propagate(
    (x) => (sight.distanceMm(x) + sight.gripDepthMm(x) + ankle) / sight.focalPx(x),
    inputs.list.map((input) => input.value),
    covarianceOf(inputs.list, 0),
  );
  return { from: 'club-at-address', mmPerPx: value, u };
}
