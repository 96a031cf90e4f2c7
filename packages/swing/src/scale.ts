import { propagate } from '@ballfirst/numbers/propagate';
import { clubInPicture } from './club-in-picture.ts';
import { depthOf } from './depth.ts';
import { covarianceOf, newInputs } from './inputs.ts';
import type { Picture, Setting } from './marks.ts';
import type { Place } from './place.ts';
import type { PlacedMarks } from './placed-marks.ts';
import { addSight } from './sight.ts';

/** Millimetres a pixel where the player stands, with its standard uncertainty, and what length it was taken from. */
export type Scale = {
  readonly from: 'club-at-address';
  readonly mmPerPx: number;
  readonly u: number;
};

/** Where the scale is told: at the ankles face-on, at the hands from behind. */
const standing = { 'face-on': 'lead-ankle', 'down-the-line': 'hands' } as const;

/**
 * The scale of a picture from the club at address: about 6 % doubt face-on, most of it in the length of the club and
 * the angle at which it is held; about 4 % from behind, where the club stands in the plane of the picture.
 *
 * @returns null when no pair of marks at address shows the club
 * @source pinhole geometry of `focal-from-club.ts` and `focal-from-club-behind.ts`; the club's length and lie are common
 * practice, no source
 */
export function scaleOf(marks: PlacedMarks, picture: Picture, setting: Setting): Scale | null {
  if (clubInPicture(marks, picture, setting.view) === null) return null;
  const inputs = newInputs();
  const sight = addSight(inputs, marks, picture, setting);
  const place: Place = { position: 'address', point: standing[setting.view] };
  const { from, mm } = depthOf(setting.view, place);
  const { value, u } = propagate(
    (x) => (sight.distanceMm(x) + sight.baseMm(from, x) + mm) / sight.focalPx(x),
    inputs.list.map((input) => input.value),
    covarianceOf(inputs.list, 0),
  );
  return { from: 'club-at-address', mmPerPx: value, u };
}
