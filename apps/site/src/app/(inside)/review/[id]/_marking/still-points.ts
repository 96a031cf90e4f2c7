import { frameOfMoment, type Mark, markAt } from './marking.ts';

/** Points that stand still through the swing, while the camera does. */
export const stillPoints: readonly Mark['point'][] = [
  'ball',
  'lead-ankle',
  'trail-ankle',
  'toe-line',
  'target-stick',
];

/** A click is a few pixels off; a camera that moved is off by more than this share of the longer side. Common practice. */
const movedShare = 0.015;

type Size = { readonly widthPx: number; readonly heightPx: number };

/** Whether a still point was marked at two moments in two places: then nothing is carried over. */
export const cameraMoves = (marks: readonly Mark[], size: Size): boolean => {
  const limit = movedShare * Math.max(size.widthPx, size.heightPx);
  return marks.some((mark) => {
    const first = markAt(marks, { position: 'address', point: mark.point });
    // A foot may leave its place on the way; the ball and what lies on the ground do not.
    const lies = mark.point === 'ball' || mark.point === 'target-stick';
    return lies && first !== undefined && Math.hypot(mark.x - first.x, mark.y - first.y) > limit;
  });
};

/**
 * The still points of address as they are seen at another frame: hollow there until they are confirmed.
 *
 * @param moment - what the frame stands for; null: a frame between moments
 */
export const carriedTo = (
  marks: readonly Mark[],
  frame: number,
  moment: Mark['position'] | null,
  size: Size,
): Mark[] => {
  if (frame === frameOfMoment(marks, 'address') || cameraMoves(marks, size)) return [];
  return stillPoints.flatMap((point) => {
    const from = markAt(marks, { position: 'address', point });
    const there = moment === null ? undefined : markAt(marks, { position: moment, point });
    if (from === undefined || there !== undefined) return [];
    return [{ ...from, position: moment ?? from.position, frame, source: 'carried' as const }];
  });
};
