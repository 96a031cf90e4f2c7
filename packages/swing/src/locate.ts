import { clothingDoubtMm } from './clothing-doubt.ts';
import { depthOf } from './depth.ts';
import type { Inputs } from './inputs.ts';
import type { Place } from './place.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { Sight } from './sight.ts';

/** A point of the player in mm, along and up from where the lens points. */
export type Located = { readonly alongMm: number; readonly upMm: number };

/**
 * Adds a mark to the inputs of a measurement and tells how to find its point in mm: each point lies at its own depth,
 * so that the nearer ball is not read as if it stood among the ankles.
 *
 * @returns a function of the input vector and the focal length in pixels
 * @source pinhole geometry, derived here: along = (D + Z) tan(yaw + atan(px / f)), up = (D + Z) px / f
 */
export function addLocated(
  inputs: Inputs,
  sight: Sight,
  place: Place,
  mark: PlacedMark,
): (x: readonly number[], focalPx: number) => Located {
  const name = `${place.position}/${place.point}`;
  const along = inputs.add({ name: `${name}/along`, value: mark.alongPx, u: mark.uPx, clicked: true });
  const up = inputs.add({ name: `${name}/up`, value: mark.upPx, u: mark.uPx, clicked: true });
  const depth = depthOf(place.point);
  const behind = inputs.add({ name: `${place.point}/depth`, value: depth.mm, u: depth.u, clicked: false });
  const u = clothingDoubtMm(place.point);
  const clothing = inputs.add({ name: `${name}/clothing`, value: 0, u, clicked: false, family: place.point });
  return (x, focalPx) => {
    const depthMm = (x[behind] ?? 0) + (depth.fromGripEnd ? sight.gripDepthMm(x) : 0);
    const away = sight.distanceMm(x) + depthMm;
    return {
      alongMm: away * Math.tan(sight.yawRad(x) + Math.atan((x[along] ?? 0) / focalPx)) + (x[clothing] ?? 0),
      upMm: (away * (x[up] ?? 0)) / focalPx,
    };
  };
}
