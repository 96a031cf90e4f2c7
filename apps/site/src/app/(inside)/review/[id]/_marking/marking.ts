import type { Reply } from '@ballfirst/contracts/client';
import type { Place } from '@ballfirst/swing/place';

export type Marking = Reply<'readMarks'>;
export type Mark = Marking['marks'][number];
export type Observation = Marking['observations'][number];
export type Evidence = Reply<'saveMarks'>['evidence'];
/** What was changed here and is not stored yet: keys of places and of observations. */
export type Touched = { readonly marks: ReadonlySet<string>; readonly observations: ReadonlySet<string> };
export type Content = Pick<Marking, 'marks' | 'observations'>;

export const keyOf = (place: Place): string => `${place.position}/${place.point}`;

export const markAt = (marks: readonly Mark[], place: Place): Mark | undefined =>
  marks.find((mark) => keyOf(mark) === keyOf(place));

export const putMark = (content: Content, mark: Mark): Content => ({
  ...content,
  marks: [...content.marks.filter((one) => keyOf(one) !== keyOf(mark)), mark],
});

export const dropMark = (content: Content, place: Place): Content => ({
  ...content,
  marks: content.marks.filter((one) => keyOf(one) !== keyOf(place)),
});

export const putObservation = (content: Content, observation: Observation): Content => ({
  ...content,
  observations: [...content.observations.filter((one) => one.key !== observation.key), observation],
});

/** The stored content with what was changed here laid over it: also a mark that was taken away here stays away. */
export const mergeMarking = (stored: Content, own: Content, touched: Touched): Content => ({
  marks: [
    ...stored.marks.filter((mark) => !touched.marks.has(keyOf(mark))),
    ...own.marks.filter((mark) => touched.marks.has(keyOf(mark))),
  ],
  observations: [
    ...stored.observations.filter((one) => !touched.observations.has(one.key)),
    ...own.observations.filter((one) => touched.observations.has(one.key)),
  ],
});

/** The next place of the pass without a mark, looking on from `from` and then from the start; null when all are placed. */
export const nextPlace = (pass: readonly Place[], marks: readonly Mark[], from: number): number | null => {
  for (let step = 0; step < pass.length; step += 1) {
    const index = (from + step) % pass.length;
    const place = pass[index];
    if (place !== undefined && markAt(marks, place) === undefined) return index;
  }
  return null;
};

/** The frame of a moment: where its first mark was placed. */
export const frameOfMoment = (marks: readonly Mark[], position: Mark['position']): number | null =>
  marks.find((mark) => mark.position === position)?.frame ?? null;

/** Points that stand still through the swing: shown at every moment. */
export const stillPoints: readonly Mark['point'][] = ['ball', 'lead-ankle', 'trail-ankle'];
