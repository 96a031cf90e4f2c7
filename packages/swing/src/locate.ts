import { clothingDoubtMm } from './clothing-doubt.ts';
import { depthOf } from './depth.ts';
import type { Inputs } from './inputs.ts';
import type { Place } from './place.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { Sight } from './sight.ts';

/** Where a point of the player lies on one axis, in mm from where the lens points, by input vector and focal length. */
export type Locate = (x: readonly number[], focalPx: number) => number;

type Seen = {
  readonly inputs: Inputs;
  readonly sight: Sight;
  readonly place: Place;
  readonly mark: PlacedMark;
};

/** How far a point lies from the lens: each at its own depth, so that the nearer ball is not read as if among the ankles. */
function addDistance({ inputs, sight, place }: Seen): (x: readonly number[]) => number {
  const { point } = place;
  const depth = depthOf(point);
  const behind =
    depth.u === 0
      ? null
      : inputs.add({ name: `${point}/depth`, value: depth.mm, u: depth.u, clicked: false });
  return (x) => {
    const beyond = behind === null ? depth.mm : (x[behind] ?? 0);
    return sight.distanceMm(x) + beyond + (depth.fromGripEnd ? sight.gripDepthMm(x) : 0);
  };
}

/**
 * Adds a mark to the inputs of a measurement, along the target line.
 *
 * @source pinhole geometry, derived here: along = (D + Z) tan(yaw + atan(px / f))
 */
export function addAlong(seen: Seen): Locate {
  const { inputs, sight, place, mark } = seen;
  const name = `${place.position}/${place.point}`;
  const px = inputs.add({ name: `${name}/along`, value: mark.alongPx, u: mark.uPx, clicked: true });
  const distance = addDistance(seen);
  const u = clothingDoubtMm(place.point);
  const clothing =
    u === 0
      ? null
      : inputs.add({ name: `${name}/clothing`, value: 0, u, clicked: false, family: place.point });
  return (x, focalPx) => {
    const worn = clothing === null ? 0 : (x[clothing] ?? 0);
    return distance(x) * Math.tan(sight.yawRad(x) + Math.atan((x[px] ?? 0) / focalPx)) + worn;
  };
}

/**
 * Adds a mark to the inputs of a measurement, upwards.
 *
 * @source pinhole geometry, derived here: up = (D + Z) px / f
 */
export function addUp(seen: Seen): Locate {
  const { inputs, place, mark } = seen;
  const name = `${place.position}/${place.point}/up`;
  const px = inputs.add({ name, value: mark.upPx, u: mark.uPx, clicked: true });
  const distance = addDistance(seen);
  return (x, focalPx) => (distance(x) * (x[px] ?? 0)) / focalPx;
}
