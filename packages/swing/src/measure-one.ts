import { propagate } from '@ballfirst/numbers/propagate';
import { clothingCorrelation } from './clothing-doubt.ts';
import type { Definition } from './definition.ts';
import { type Formula, formulas, type Spot } from './formulas.ts';
import { covarianceOf, newInputs } from './inputs.ts';
import { addLevel, addUp, type Locate } from './locate.ts';
import type { Picture, Setting } from './marks.ts';
import type { Measurement } from './measurement.ts';
import { measurementNames } from './measurement-names.ts';
import { notMarked } from './missing-words.ts';
import type { Place } from './place.ts';
import type { PlacedMarks } from './placed-marks.ts';
import { ankles, placesOf } from './places-of.ts';
import { addSight } from './sight.ts';

const nowhere: Locate = () => 0;

/**
 * One measurement with its doubt: clicks, clothing, depth, yaw, roll, distance and club length go through one law of
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
    if (mark === undefined) throw new RangeError(`${notMarked(place)}.`);
    return { inputs, sight, view: setting.view, place, mark };
  };
  const formula: Formula = formulas[definition.formula];
  const level = definition.places.map((place) => (formula.needs === 'up' ? nowhere : addLevel(seen(place))));
  const up = definition.places.map((place) => (formula.needs === 'level' ? nowhere : addUp(seen(place))));
  const leadAnkle = definition.perAnkles ? addLevel(seen(ankles.lead)) : nowhere;
  const trailAnkle = definition.perAnkles ? addLevel(seen(ankles.trail)) : nowhere;
  const { value: shift, u: uShift } = definition.offset;
  const offset =
    uShift === 0 ? null : inputs.add({ name: 'offset', value: shift, u: uShift, clicked: false });

  const model = (x: readonly number[]): number => {
    const focalPx = sight.focalPx(x);
    const spots = level.map(
      (locate, i): Spot => ({ level: locate(x, focalPx), up: (up[i] ?? nowhere)(x, focalPx) }),
    );
    const raw = formula.of(spots);
    const signed = (definition.backwards ? -raw : raw) + (offset === null ? shift : (x[offset] ?? 0));
    if (!definition.perAnkles) return signed;
    return (100 * signed) / (leadAnkle(x, focalPx) - trailAnkle(x, focalPx));
  };
  const { value, u, sensitivities } = propagate(
    model,
    inputs.list.map((input) => input.value),
    covarianceOf(inputs.list, clothingCorrelation),
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
