import type { Mark, Picture, Point } from '../marks/marks.ts';

/** Spread of most clicks in pixels of a picture 1080 pixels on its short side, 1 SD. Common practice, no source. */
const clickAt1080: Readonly<Record<Point, number>> = {
  ball: 1,
  'lead-heel': 2,
  'trail-heel': 2,
  clubhead: 2,
  'target-stick': 2,
  'target-stick-ahead': 2,
  'lead-wrist': 3,
  'lead-elbow': 4,
  'grip-end': 3,
  'shaft-mid': 3,
  hands: 3,
  'lead-ankle': 3,
  'trail-ankle': 3,
  'toe-line': 3,
  'lead-toe': 2,
  'trail-toe': 2,
  'head-centre': 4,
  'seat-line': 4,
  'lead-shoulder': 5,
  'neck-base': 5,
  'lead-thigh-inside': 5,
  'thigh-front': 5,
  'hip-middle': 6,
};

/** One click in ten goes three times as far astray: the standard deviation of all is sqrt(.9 + .1 x 9) of most. */
const strayed = Math.sqrt(0.9 + 0.1 * 9);

/** A coach who errs on a kind of point errs the same way at every moment: so much of the spread. Common practice. */
const habitShare = 0.5;

// A point placed by the machine and not yet confirmed is trusted half as far. Common practice, no source.
const suggestedFactor = 2;

export type ClickDoubt = {
  /** Of one click, each way. */
  readonly uPx: number;
  /** What one person adds to every click on this kind of point. */
  readonly uHabitPx: number;
};

/**
 * Standard uncertainty of a mark from clicking alone, each way.
 *
 * @returns pixels of this picture; it grows with the picture, because what blurs an edge does
 * @source variance of a mixture of two normal distributions; its shares are common practice, no source
 */
export function clickDoubt(mark: Mark, picture: Picture): ClickDoubt {
  const size = Math.min(picture.widthPx, picture.heightPx) / 1080;
  const most =
    Math.max(0.5, clickAt1080[mark.point] * size) * (mark.source === 'suggested' ? suggestedFactor : 1);
  return { uPx: strayed * most, uHabitPx: habitShare * most };
}
