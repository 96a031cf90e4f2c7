import { checkMark } from './check-mark.ts';
import { clickDoubtPx } from './click-doubt.ts';
import { type FramePoint, toFrame } from './frame.ts';
import type { Mark, Picture, Setting } from './marks.ts';
import type { Place } from './place.ts';

export type PlacedMark = FramePoint & { readonly uPx: number };

/** The marks of a swing in its frame, found by place. */
export type PlacedMarks = {
  at(place: Place): PlacedMark | undefined;
};

/**
 * Brings marks into the frame of the swing: here a left-hander is mirrored, once.
 *
 * @throws MarkOutsideError when a mark or its frame lies outside
 */
export function placeMarks(marks: readonly Mark[], picture: Picture, setting: Setting): PlacedMarks {
  const byPlace = new Map<string, PlacedMark>();
  for (const mark of marks) {
    checkMark(mark, picture);
    const placed = { ...toFrame(mark, picture, setting.hand), uPx: clickDoubtPx(mark, picture) };
    byPlace.set(`${mark.position}/${mark.point}`, placed);
  }
  return { at: (place) => byPlace.get(`${place.position}/${place.point}`) };
}
