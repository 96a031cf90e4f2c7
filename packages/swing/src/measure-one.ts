import { propagateSources } from '@ballfirst/numbers/propagate-sources';
import { type Coordinate, clickedDoubt } from './coordinate.ts';
import { ankles, type Definition } from './definition.ts';
import { type Formula, formulas } from './formulas.ts';
import type { Measurement } from './measurement.ts';
import { measurementNames } from './measurement-names.ts';
import { bentByShutter } from './rolling-shutter.ts';
import type { SeenSwing } from './seen-swing.ts';

/** What is added to what the picture shows, with its doubt. */
function shiftOf({ offset, bentByShutter: bent, places }: Definition, swing: SeenSwing) {
  const [over, under] = places;
  if (!bent || over === undefined || under === undefined) return offset;
  const { deg, uDeg } = bentByShutter(swing.rowsBetween(over, under));
  return { value: offset.value + deg, u: Math.hypot(offset.u, uDeg) };
}

/**
 * One measurement with its doubt: clicks, clothing, depth, yaw, roll, distance and club length go through the law of
 * propagation, first to the places in mm, then to what is made of them; `uStatistical` keeps the clicks alone.
 *
 * @throws RangeError when a mark of the definition is missing or lies where the model ends
 * @source JCGM 100:2008, equation 13, over the pinhole model of `locate.ts`
 */
export function measureOne(definition: Definition, swing: SeenSwing): Measurement {
  const formula: Formula = formulas[definition.formula];
  const { value: shift, u: uShift } = shiftOf(definition, swing);
  const coordinates: Coordinate[] = [];
  const use = (coordinate: Coordinate) => {
    const known = coordinates.indexOf(coordinate);
    return known >= 0 ? known : coordinates.push(coordinate) - 1;
  };
  const level = definition.places.map((place) => (formula.needs === 'up' ? -1 : use(swing.level(place))));
  const up = definition.places.map((place) => (formula.needs === 'level' ? -1 : use(swing.up(place))));
  const lead = definition.perAnkles ? use(swing.level(ankles.lead)) : -1;
  const trail = definition.perAnkles ? use(swing.level(ankles.trail)) : -1;
  const sign = definition.backwards ? -1 : 1;

  const model = (x: readonly number[]): number => {
    const spots = level.map((index, i) => ({ level: x[index] ?? 0, up: x[up[i] ?? -1] ?? 0 }));
    const signed = sign * formula.of(spots) + shift;
    return definition.perAnkles ? (100 * signed) / ((x[lead] ?? 0) - (x[trail] ?? 0)) : signed;
  };
  const { value, u, effects } = propagateSources(
    model,
    coordinates.map((coordinate) => coordinate.value),
    coordinates,
    swing.sources.count,
  );
  return {
    key: definition.key,
    unit: measurementNames[definition.key].unit,
    value,
    u: Math.hypot(u, uShift),
    uStatistical: clickedDoubt(effects, swing.sources.clicked),
    effects,
    proxy: definition.proxy,
    positions: definition.positions,
  };
}
