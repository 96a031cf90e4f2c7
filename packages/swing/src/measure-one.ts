import { propagateSources, sumSources } from '@ballfirst/numbers/propagate-sources';
import { type Coordinate, clickedDoubt } from './camera/coordinate.ts';
import { bentByShutter } from './camera/rolling-shutter.ts';
import type { SeenSwing } from './camera/seen-swing.ts';
import { ankles, type Definition } from './definitions/definition.ts';
import { type Formula, formulas } from './definitions/formulas.ts';
import { measurementNames } from './definitions/measurement-names.ts';
import type { Measurement } from './measurement.ts';

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

  const { weights } = formula;
  const x = coordinates.map((coordinate) => coordinate.value);
  const spots = definition.places.map(() => ({ level: 0, up: 0 }));
  const model = (at: readonly number[]): number => {
    // Filled anew at every step: the model is asked a dozen times for each measurement.
    for (let i = 0; i < spots.length; i += 1) {
      const spot = spots[i];
      if (spot === undefined) continue;
      spot.level = at[level[i] ?? -1] ?? 0;
      spot.up = at[up[i] ?? -1] ?? 0;
    }
    const signed = sign * formula.of(spots) + shift;
    return definition.perAnkles ? (100 * signed) / ((at[lead] ?? 0) - (at[trail] ?? 0)) : signed;
  };
  /** Closed form of the sensitivities of a sum, or of a sum in percent of the distance between the ankles. */
  const slopesOf = (value: number, by: readonly number[]): number[] => {
    const slopes = new Array<number>(x.length).fill(0);
    const add = (index: number, slope: number) => {
      slopes[index] = (slopes[index] ?? 0) + slope;
    };
    const apart = definition.perAnkles ? (x[lead] ?? 0) - (x[trail] ?? 0) : 1;
    const scale = (definition.perAnkles ? 100 : 1) * (sign / apart);
    by.forEach((weight, i) => {
      add((formula.needs === 'up' ? up : level)[i] ?? -1, scale * weight);
    });
    if (definition.perAnkles) {
      add(lead, -value / apart);
      add(trail, value / apart);
    }
    return slopes;
  };
  const { count } = swing.sources;
  const linear = (by: readonly number[]) => {
    const value = model(x);
    return { value, ...sumSources(slopesOf(value, by), coordinates, count) };
  };
  const { value, u, felt } =
    weights === undefined ? propagateSources(model, x, coordinates, count) : linear(weights);
  return {
    key: definition.key,
    unit: measurementNames[definition.key].unit,
    value,
    u: Math.hypot(u, uShift),
    uStatistical: clickedDoubt(felt, swing.sources.clicked),
    felt,
    proxy: definition.proxy,
    positions: definition.positions,
  };
}
