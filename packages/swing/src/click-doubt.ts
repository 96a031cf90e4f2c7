import type { Mark, Picture, Point } from './marks.ts';

/** Standard deviation of one click in pixels of a picture 1080 pixels on its short side. Common practice, no source. */
const clickDoubtAt1080: Readonly<Record<Point, number>> = {
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
  'head-centre': 4,
  'seat-line': 4,
  'lead-shoulder': 5,
  'neck-base': 5,
  'lead-thigh-inside': 5,
  'thigh-front': 5,
  'hip-middle': 6,
};

// A point placed by the machine and not yet confirmed is trusted half as far. Common practice, no source.
const suggestedFactor = 2;

/**
 * Standard uncertainty of a mark from clicking alone, each way.
 *
 * @returns pixels of this picture; it grows with the picture, because what blurs an edge does
 */
export function clickDoubtPx(mark: Mark, picture: Picture): number {
  const size = Math.min(picture.widthPx, picture.heightPx) / 1080;
  return (
    Math.max(0.5, clickDoubtAt1080[mark.point] * size) * (mark.source === 'suggested' ? suggestedFactor : 1)
  );
}
