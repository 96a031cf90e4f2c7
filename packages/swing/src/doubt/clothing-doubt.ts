import type { Point } from '../marks/marks.ts';

/** What clothing and turn hide on the level axis, 1 SD in mm by moment: marking twice does not show it. Common practice. */
const clothingMm: Readonly<Partial<Record<Point, number>>> = {
  'hip-middle': 17,
  'neck-base': 17,
  'lead-shoulder': 15,
  'lead-thigh-inside': 5,
  'thigh-front': 10,
  'seat-line': 15,
  'toe-line': 5,
  'head-centre': 5,
};

/** The same shirt hides the same edge at every moment, in part: correlation between two moments. Common practice. */
export const clothingCorrelation = 0.5;

/** Standard uncertainty of a point on the level axis from clothing and turn, in mm; 0 for what wears none. */
export function clothingDoubtMm(point: Point): number {
  return clothingMm[point] ?? 0;
}
