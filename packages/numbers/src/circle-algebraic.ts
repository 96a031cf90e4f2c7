import { type Circle, checkCirclePoints, type XY } from './circle.ts';
import { symmetricEigen } from './symmetric-eigen.ts';

/**
 * Circle by the smallest algebraic distance a(x^2 + y^2) + b'x + c with coefficients of length one. Depends on where the
 * origin lies; a start for the geometric fit and a reference.
 *
 * @param points - at least three, not on one line
 * @throws RangeError on points that no circle fits
 * @source Gander, Golub & Strebel 1994, BIT 34:558, section 2
 * @example circleAlgebraic([[1, 7], [2, 6], [5, 8], [7, 7], [9, 5], [3, 7]]).r // 3.0370
 */
export function circleAlgebraic(points: readonly XY[]): Circle {
  checkCirclePoints(points);
  const rows = points.map(([x, y]) => [x * x + y * y, x, y, 1]);
  const four = [0, 1, 2, 3];
  const normal = four.map((i) =>
    four.map((j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
  );
  const [a = 0, b = 0, c = 0, d = 0] = symmetricEigen(normal).vectors[0] ?? [];
  const inside = (b * b + c * c) / (4 * a * a) - d / a;
  if (!(inside > 0) || !Number.isFinite(inside)) throw new RangeError('No circle fits the points.');
  return { x: -b / (2 * a), y: -c / (2 * a), r: Math.sqrt(inside) };
}
