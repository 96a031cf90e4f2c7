import { type FramePoint, toFrame } from '../camera/frame.ts';
import { type ClickDoubt, clickDoubt } from '../doubt/click-doubt.ts';
import { checkMark } from './check-mark.ts';
import { checkPicture } from './check-picture.ts';
import type { Mark, Picture, Point, Position, Setting } from './marks.ts';
import type { Place } from './place.ts';

export type PlacedMark = FramePoint & ClickDoubt;

/** The marks of a swing in its frame, found by place. */
export type PlacedMarks = {
  at(place: Place): PlacedMark | undefined;
  /** The frame of a moment: that of its marks which were placed there, not carried over; the last counts. */
  frameOf(position: Position): number | undefined;
};

/** More marks than any swing has places for: somebody is trying. */
const mostMarks = 1000;

/**
 * Brings marks into the frame of the swing: here a left-hander is mirrored, once.
 *
 * @throws MarkOutsideError when a mark or its frame lies outside
 * @throws RangeError when there are more marks than a swing could have, or the picture is none
 */
export function placeMarks(marks: readonly Mark[], picture: Picture, setting: Setting): PlacedMarks {
  if (marks.length > mostMarks) throw new RangeError(`${marks.length} marks are more than a swing has.`);
  checkPicture(picture);
  const byPosition = new Map<Position, Map<Point, PlacedMark>>();
  const frames = new Map<Position, number>();
  for (const mark of marks) {
    checkMark(mark, picture);
    const { levelPx, upPx } = toFrame(mark, picture, setting.hand, setting.view);
    const { uPx, uHabitPx } = clickDoubt(mark, picture);
    let there = byPosition.get(mark.position);
    if (there === undefined) {
      there = new Map();
      byPosition.set(mark.position, there);
    }
    there.set(mark.point, { levelPx, upPx, uPx, uHabitPx });
    if (mark.source !== 'carried') frames.set(mark.position, mark.frame);
  }
  return {
    at: (place) => byPosition.get(place.position)?.get(place.point),
    frameOf: (position) => frames.get(position),
  };
}
