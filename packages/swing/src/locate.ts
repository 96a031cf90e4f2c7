import { clothingDoubtMm } from './clothing-doubt.ts';
import { depthOf } from './depth.ts';
import type { Inputs } from './inputs.ts';
import type { View } from './marks.ts';
import type { Place } from './place.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { Sight } from './sight.ts';

/** Where a point of the player lies on one axis, in mm from where the lens points, by input vector and focal length. */
export type Locate = (x: readonly number[], focalPx: number) => number;

type Seen = {
  readonly inputs: Inputs;
  readonly sight: Sight;
  readonly view: View;
  readonly place: Place;
  readonly mark: PlacedMark;
};

/** How far a point lies from the lens: each at its own depth, so that the nearer ball is not read as if among the ankles. */
function addDistance({ inputs, sight, view, place }: Seen): (x: readonly number[]) => number {
  const { name, from, mm, u } = depthOf(view, place);
  if (u === 0) return (x) => sight.distanceMm(x) + mm + sight.baseMm(from, x);
  const behind = inputs.add({ name: `${name}/depth`, value: mm, u, clicked: false });
  return (x) => sight.distanceMm(x) + (x[behind] ?? 0) + sight.baseMm(from, x);
}

/**
 * Adds a mark to the inputs of a measurement, on the level axis.
 *
 * @source pinhole geometry, derived here: level = (D + Z) tan(yaw + atan(px / f)), px turned back by the roll
 */
export function addLevel(seen: Seen): Locate {
  const { inputs, sight, place, mark } = seen;
  const name = `${place.position}/${place.point}`;
  const px = inputs.add({ name: `${name}/level`, value: mark.levelPx, u: mark.uPx, clicked: true });
  const distance = addDistance(seen);
  const u = clothingDoubtMm(place.point);
  const clothing =
    u === 0
      ? null
      : inputs.add({ name: `${name}/clothing`, value: 0, u, clicked: false, family: place.point });
  return (x, focalPx) => {
    const worn = clothing === null ? 0 : (x[clothing] ?? 0);
    const roll = sight.rollRad(x);
    const upright = (x[px] ?? 0) * Math.cos(roll) + mark.upPx * Math.sin(roll);
    return distance(x) * Math.tan(sight.yawRad(x) + Math.atan(upright / focalPx)) + worn;
  };
}

/**
 * Adds a mark to the inputs of a measurement, upwards.
 *
 * @source pinhole geometry, derived here: up = (D + Z) px / f, px turned back by the roll
 */
export function addUp(seen: Seen): Locate {
  const { inputs, sight, place, mark } = seen;
  const name = `${place.position}/${place.point}/up`;
  const px = inputs.add({ name, value: mark.upPx, u: mark.uPx, clicked: true });
  const distance = addDistance(seen);
  return (x, focalPx) => {
    const roll = sight.rollRad(x);
    return (distance(x) * ((x[px] ?? 0) * Math.cos(roll) - mark.levelPx * Math.sin(roll))) / focalPx;
  };
}
