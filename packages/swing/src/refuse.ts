import type { Definition } from './definitions/definition.ts';
import type { MeasurementKey } from './definitions/measurement-names.ts';
import type { Position } from './marks/marks.ts';
import { notMarked, positionInWords } from './marks/missing-words.ts';
import type { PlacedMarks } from './marks/placed-marks.ts';
import type { Refusal, RefusedWhy } from './measurement.ts';

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** A refusal in plain words: "Lead ankle is not marked at top." */
export const refuse = (key: MeasurementKey, why: RefusedWhy, words: string): Refusal => ({
  key,
  why,
  words: sentence(words),
});

/** Names the missing marks of the definition that lacks fewest. */
export function refuseForMarks(
  key: MeasurementKey,
  candidates: readonly Definition[],
  marks: PlacedMarks,
): Refusal {
  const lacking = candidates
    .map((definition) => definition.needed.filter((place) => marks.at(place) === undefined))
    .reduce((fewest, one) => (one.length < fewest.length ? one : fewest));
  return refuse(key, 'marks-missing', lacking.map(notMarked).join(', '));
}

/** Names two moments that stand on frames in the wrong order. */
export const refuseForOrder = (key: MeasurementKey, later: Position, earlier: Position): Refusal =>
  refuse(
    key,
    'moments-out-of-order',
    `${positionInWords(later)} is marked on an earlier frame than ${positionInWords(earlier)}`,
  );
