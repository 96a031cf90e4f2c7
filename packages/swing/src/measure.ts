import type { ClubheadPixel } from './arc/clubhead-track.ts';
import { lowPointOf } from './arc/low-point.ts';
import { type ArcNotRead, type ArcReading, readArc } from './arc/read-arc.ts';
import { anklesApart } from './camera/ankles-apart.ts';
import { type Scale, scaleOf } from './camera/scale.ts';
import { scaleWarnings } from './camera/scale-warnings.ts';
import { scaleWords } from './camera/scale-words.ts';
import { type SeenSwing, seeSwing } from './camera/seen-swing.ts';
import type { Definition } from './definitions/definition.ts';
import { definitions } from './definitions/definitions.ts';
import { type MeasurementKey, measurementKeys, measurementNames } from './definitions/measurement-names.ts';
import { measureToeLine } from './definitions/toe-line.ts';
import { doubtTooLarge } from './doubt/doubt-limit.ts';
import { lacksMoment, lacksPosition } from './marks/lacks-moment.ts';
import type { Mark, Picture, Setting, View } from './marks/marks.ts';
import { positionInWords } from './marks/missing-words.ts';
import { outOfOrder } from './marks/moments-in-order.ts';
import { type PlacedMarks, placeMarks } from './marks/placed-marks.ts';
import { measureOne } from './measure-one.ts';
import type { Measurement, Refusal } from './measurement.ts';
import { refuse, refuseForMarks, refuseForOrder } from './refuse.ts';
import { measureTempo, tempoPositions } from './tempo.ts';

export type Measured = {
  readonly measurements: readonly Measurement[];
  readonly refusals: readonly Refusal[];
  /** Null when neither stick nor club is marked; millimetres are refused then, ratios and angles are not. */
  readonly scale: Scale | null;
  /** What does not fit together, in words for a coach. */
  readonly warnings: readonly string[];
  /** What the clubhead near the ball tells of its arc. */
  readonly arc: ArcReading | ArcNotRead;
};

type ByKey = ReadonlyMap<MeasurementKey, readonly Definition[]>;
const inView = (view: View): ByKey =>
  new Map(
    measurementKeys
      .map((key) => [key, definitions.filter((one) => one.view === view && one.key === key)] as const)
      .filter(([, candidates]) => candidates.length > 0),
  );
const byView: Readonly<Record<View, ByKey>> = {
  'face-on': inView('face-on'),
  'down-the-line': inView('down-the-line'),
};

const complete = (definition: Definition, marks: PlacedMarks) =>
  definition.needed.every((place) => marks.at(place) !== undefined);

/**
 * Every measurement the marks of one swing allow in their view, and for each other one why not.
 *
 * @param marks - points on frames, in pixels; the last of two for one place counts
 * @param picture - what they were placed on
 * @param setting - view, hand, club and swing length
 * @param trail - the clubhead over frames near the ball, where it was marked: the lowest point of its arc is read from it
 * @throws MarkOutsideError (a RangeError) when a mark or its frame lies outside
 * @example measure(marks, picture, { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' })
 */
export function measure(
  marks: readonly Mark[],
  picture: Picture,
  setting: Setting,
  trail: readonly ClubheadPixel[] = [],
): Measured {
  const placed = placeMarks(marks, picture, setting);
  const swing = seeSwing(placed, picture, setting);
  const scale = scaleOf(swing.sight, setting);
  const measurements: Measurement[] = [];
  const refusals: Refusal[] = [];
  const arc = readArc(trail, marks, picture, setting);
  const makeOf = (key: MeasurementKey): Measurement | Refusal => {
    if (key === 'tempo-ratio') return tempo(placed, picture, setting);
    if (key === 'toe-line-to-target-stick') return measureToeLine(placed, swing.sight, setting);
    if (key === 'low-point-ahead-of-ball') return lowPointOf(arc);
    return one(key, placed, swing, setting);
  };
  for (const key of measurementKeys) {
    const made = makeOf(key);
    if ('why' in made) refusals.push(made);
    else measurements.push(made);
  }
  const warnings = scaleWarnings(swing.sight, placed, picture, setting);
  return { measurements, refusals, scale, warnings, arc };
}

function one(
  key: MeasurementKey,
  placed: PlacedMarks,
  swing: SeenSwing,
  setting: Setting,
): Measurement | Refusal {
  const candidates = byView[setting.view].get(key);
  if (candidates === undefined)
    return refuse(key, 'wrong-view', `a ${setting.view} picture does not show it`);
  if (candidates.every((definition) => lacksMoment(definition, setting.swingLength))) {
    return refuse(key, 'not-for-this-length', `a ${setting.swingLength} swing has no such moment`);
  }
  const definition = candidates.find((candidate) => complete(candidate, placed));
  if (definition === undefined) return refuseForMarks(key, candidates, placed);
  const wrong = outOfOrder(placed, definition.positions);
  if (wrong !== null) return refuseForOrder(key, wrong.later, wrong.earlier);
  if (definition.perAnkles && !anklesApart(placed)) {
    return refuse(key, 'doubt-too-large', 'the lead ankle does not stand clear of the trail ankle');
  }
  const { unit } = measurementNames[key];
  if (swing.sight.scaleFrom === null && unit === 'mm')
    return refuse(key, 'no-scale', scaleWords(setting.view));
  const made = measureOne(definition, swing);
  return doubtTooLarge(made.unit, made.u)
    ? refuse(key, 'doubt-too-large', 'the doubt is larger than what it could tell')
    : made;
}

function tempo(placed: PlacedMarks, picture: Picture, { swingLength }: Setting): Measurement | Refusal {
  const key = 'tempo-ratio';
  if (lacksPosition('top', swingLength)) {
    return refuse(key, 'not-for-this-length', `a ${swingLength} swing has no such moment`);
  }
  const bare = tempoPositions.filter((position) => placed.frameOf(position) === undefined);
  if (bare.length > 0) {
    return refuse(
      key,
      'marks-missing',
      bare.map((position) => `nothing is marked at ${positionInWords(position)}`).join(', '),
    );
  }
  const wrong = outOfOrder(placed, tempoPositions);
  if (wrong !== null) return refuseForOrder(key, wrong.later, wrong.earlier);
  try {
    const made = measureTempo(placed, picture);
    return doubtTooLarge(made.unit, made.u)
      ? refuse(key, 'doubt-too-large', 'too few frames lie between these moments')
      : made;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return refuse(key, 'doubt-too-large', 'too few frames lie between these moments');
  }
}
