import { anklesApart } from './ankles-apart.ts';
import type { Definition } from './definition.ts';
import { definitions } from './definitions.ts';
import { doubtTooLarge } from './doubt-limit.ts';
import { lacksMoment } from './lacks-moment.ts';
import type { Mark, Picture, Setting } from './marks.ts';
import { measureOne } from './measure-one.ts';
import type { Measurement, Refusal } from './measurement.ts';
import { type MeasurementKey, measurementKeys, measurementNames } from './measurement-names.ts';
import { type PlacedMarks, placeMarks } from './placed-marks.ts';
import { placesOf } from './places-of.ts';
import { type Scale, scaleOf } from './scale.ts';

export type Measured = {
  readonly measurements: readonly Measurement[];
  readonly refusals: readonly Refusal[];
  /** Null when the club at address is not marked; millimetres are refused then, ratios and angles are not. */
  readonly scale: Scale | null;
};

const byKey = new Map<MeasurementKey, readonly Definition[]>(
  measurementKeys.map((key) => [key, definitions.filter((definition) => definition.key === key)]),
);

const complete = (definition: Definition, marks: PlacedMarks) =>
  placesOf(definition).every((place) => marks.at(place) !== undefined);

/**
 * Every measurement the marks of one swing allow, and for each other one why not.
 *
 * @param marks - points on frames, in pixels; the last of two for one place counts
 * @param picture - what they were placed on
 * @param setting - view, hand, club and swing length; only face-on is measured
 * @throws MarkOutsideError (a RangeError) when a mark or its frame lies outside
 * @example measure(marks, picture, { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' })
 */
export function measure(marks: readonly Mark[], picture: Picture, setting: Setting): Measured {
  const placed = placeMarks(marks, picture, setting);
  const scale = setting.view === 'face-on' ? scaleOf(placed, picture, setting) : null;
  const measurements: Measurement[] = [];
  const refusals: Refusal[] = [];
  const one = (key: MeasurementKey): Measurement | Refusal['why'] => {
    if (setting.view !== 'face-on') return 'wrong-view';
    const candidates = byKey.get(key) ?? [];
    if (candidates.every((definition) => lacksMoment(definition, setting.swingLength))) {
      return 'not-for-this-length';
    }
    const definition = candidates.find((candidate) => complete(candidate, placed));
    if (definition === undefined) return 'marks-missing';
    if (definition.perAnkles && !anklesApart(placed)) return 'doubt-too-large';
    if (scale === null && measurementNames[key].unit === 'mm') return 'no-scale';
    const made = measureOne(definition, placed, picture, setting);
    return doubtTooLarge(made.unit, made.u) ? 'doubt-too-large' : made;
  };
  for (const key of measurementKeys) {
    const made = one(key);
    if (typeof made === 'string') refusals.push({ key, why: made });
    else measurements.push(made);
  }
  return { measurements, refusals, scale };
}
