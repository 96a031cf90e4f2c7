import { propagate } from '@ballfirst/numbers/propagate';
import { clothingCorrelation } from './clothing-doubt.ts';
import type { Definition } from './definition.ts';
import { covarianceOf, newInputs } from './inputs.ts';
import { addAlong, addUp, type Locate } from './locate.ts';
import type { Picture, Setting } from './marks.ts';
import type { Measurement } from './measurement.ts';
import { measurementNames } from './measurement-names.ts';
import type { Place } from './place.ts';
import type { PlacedMarks } from './placed-marks.ts';
import { ankles, placesOf } from './places-of.ts';
import { addSight } from './sight.ts';

/**
 * One measurement with its doubt: clicks, clothing, depth, yaw, distance and club length go through one law of
 * propagation; `uStatistical` keeps the clicks alone.
 *
 * @throws RangeError when a mark of the definition is missing or lies where the model ends
 * @source JCGM 100:2008, equation 13, over the pinhole model of `locate.ts`
 */
export function measureOne(
  definition: Definition,
  marks: PlacedMarks,
  picture: Picture,
  setting: Setting,
): Measurement {
  const inputs = newInputs();
  const sight = addSight(inputs, marks, picture, setting);
  const seen = (place: Place) => {
    const mark = marks.at(place);
    if (mark === undefined) throw new RangeError(`No mark for ${place.point} at ${place.position}.`);
    return { inputs, sight, place, mark };
  };
  const apart = (add: typeof addAlong, of: Place, from: Place): Locate => {
    const end = add(seen(of));
    const start = add(seen(from));
    return (x, focalPx) => end(x, focalPx) - start(x, focalPx);
  };
  const { axis, of, from, backwards } = definition;
  const along = axis === 'up' ? null : apart(addAlong, of, from);
  const up = axis === 'along' ? null : apart(addUp, of, from);
  const ankleDistance = definition.perAnkles ? apart(addAlong, ankles.lead, ankles.trail) : null;
  const { value: shift, u: uShift } = definition.offset ?? { value: 0, u: 0 };
  const offset =
    uShift === 0 ? null : inputs.add({ name: 'offset', value: shift, u: uShift, clicked: false });

  const model = (x: readonly number[]): number => {
    const focalPx = sight.focalPx(x);
    const a = along?.(x, focalPx) ?? 0;
    const b = up?.(x, focalPx) ?? 0;
    const raw = axis === 'lean' ? (Math.atan2(a, b) * 180) / Math.PI : a + b;
    const signed = (backwards ? -raw : raw) + (offset === null ? shift : (x[offset] ?? 0));
    return ankleDistance === null ? signed : (100 * signed) / ankleDistance(x, focalPx);
  };
  const covariance = covarianceOf(inputs.list, clothingCorrelation);
  const { value, u, sensitivities } = propagate(
    model,
    inputs.list.map((input) => input.value),
    covariance,
  );
  // Clicks are independent of one another and of all else.
  const clicks = inputs.list.map(({ clicked, u: uInput }, i) =>
    clicked ? (sensitivities[i] ?? 0) * uInput : 0,
  );
  return {
    key: definition.key,
    unit: measurementNames[definition.key].unit,
    value,
    u,
    uStatistical: Math.hypot(...clicks),
    proxy: definition.proxy,
    positions: [...new Set(placesOf(definition).map(({ position }) => position))],
  };
}
