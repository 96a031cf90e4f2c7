import type { Reply } from '@ballfirst/contracts/client';
import type { SwingEvidence } from '@ballfirst/diagnosis/evidence-of';
import type { Place } from '@ballfirst/swing/marks/place';

export type Marking = Reply<'readMarks'>;
export type Mark = Marking['marks'][number];
export type Observation = Marking['observations'][number];
export type Evidence = SwingEvidence;
export type TrailPoint = Marking['trail'][number];
/** What a coach puts on a clip; a draft that was kept before there were trails has none. */
export type Content = Pick<Marking, 'marks' | 'observations'> & { readonly trail?: readonly TrailPoint[] };

export const keyOf = (place: Place): string => `${place.position}/${place.point}`;
export const samePlace = (a: Place | null, b: Place | null): boolean =>
  a !== null && b !== null && keyOf(a) === keyOf(b);

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

/** The clubhead on a frame in place of what stood there, in the order of the frames. */
export const putTrail = (content: Content, point: TrailPoint): Content => ({
  ...content,
  trail: [...(content.trail ?? []).filter(({ frame }) => frame !== point.frame), point].sort(
    (a, b) => a.frame - b.frame,
  ),
});

/** The next place of the pass without a mark, looking on from `from` and then from the start; null when all are placed. */
export const nextPlace = (
  pass: readonly Place[],
  marks: readonly Mark[],
  from: Place | null,
): Place | null => {
  const start = Math.max(
    0,
    pass.findIndex((place) => samePlace(place, from)),
  );
  const inOrder = [...pass.slice(start), ...pass.slice(0, start)];
  return inOrder.find((place) => markAt(marks, place) === undefined) ?? null;
};

/** The frame of a moment: where its first mark was placed. */
export const frameOfMoment = (marks: readonly Mark[], position: Mark['position']): number | null =>
  marks.find((mark) => mark.position === position)?.frame ?? null;

/** The moment a frame stands for: that of the marks on it, or the one that is being looked for. */
export const momentOfFrame = (
  marks: readonly Mark[],
  frame: number,
  sought: Place | null,
): Mark['position'] | null => {
  const there = marks.find((mark) => mark.frame === frame)?.position;
  if (there !== undefined) return there;
  return sought !== null && frameOfMoment(marks, sought.position) === null ? sought.position : null;
};
