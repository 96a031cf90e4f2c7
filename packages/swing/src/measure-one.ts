import { propagate } from '@ballfirst/numbers/propagate';
import { varianceOf } from '@ballfirst/numbers/variance-of';
import { clothingCorrelation } from './clothing-doubt.ts';
import type { Definition } from './definition.ts';
import { covarianceOf, newInputs } from './inputs.ts';
import { addLocated, type Located } from './locate.ts';
import type { Picture, Setting } from './marks.ts';
import type { Measurement } from './measurement.ts';
import { measurementNames } from './measurement-names.ts';
import type { PlacedMarks } from './placed-marks.ts';
import { ankles, placesOf } from './places-of.ts';
import { addSight } from './sight.ts';

const difference = (axis: Definition['axis'], of: Located, from: Located): number => {
  const along = of.alongMm - from.alongMm;
  const up = of.upMm - from.upMm;
  if (axis === 'lean') return (Math.atan2(along, up) * 180) / Math.PI;
  return axis === 'along' ? along : up;
};

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
  const located = (place: Definition['of']) => {
    const mark = marks.at(place);
    if (mark === undefined) throw new RangeError(`No mark for ${place.point} at ${place.position}.`);
    return addLocated(inputs, sight, place, mark);
  };
  const of = located(definition.of);
  const from = located(definition.from);
  const lead = definition.perAnkles ? located(ankles.lead) : null;
  const trail = definition.perAnkles ? located(ankles.trail) : null;
  const { value: shift, u: uShift } = definition.offset ?? { value: 0, u: 0 };
  const offset = inputs.add({ name: 'offset', value: shift, u: uShift, clicked: false });

  const model = (x: readonly number[]): number => {
    const focalPx = sight.focalPx(x);
    const raw = difference(definition.axis, of(x, focalPx), from(x, focalPx));
    const signed = (definition.backwards ? -raw : raw) + (x[offset] ?? 0);
    if (lead === null || trail === null) return signed;
    return (100 * signed) / (lead(x, focalPx).alongMm - trail(x, focalPx).alongMm);
  };
  const covariance = covarianceOf(inputs.list, clothingCorrelation);
  const { value, u, sensitivities } = propagate(
    model,
    inputs.list.map((input) => input.value),
    covariance,
  );
  const clicks = inputs.list.map((input, i) => (input.clicked ? (sensitivities[i] ?? 0) : 0));
  return {
    key: definition.key,
    unit: measurementNames[definition.key].unit,
    value,
    u,
    uStatistical: Math.sqrt(varianceOf(clicks, covariance)),
    proxy: definition.proxy,
    positions: [...new Set(placesOf(definition).map(({ position }) => position))],
  };
}
