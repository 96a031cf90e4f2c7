import { type Circle, centred, checkCirclePoints, type XY } from './circle.ts';
import { symmetricEigen } from './symmetric-eigen.ts';

/**
 * Circle by algebraic distance over its mean squared gradient: almost the geometric fit, without a search.
 *
 * @param points - at least three, not on one line
 * @throws RangeError on points that no circle fits
 * @source Taubin 1991, IEEE Transactions on Pattern Analysis 13:1115, written for a circle with centred points
 * @example circleTaubin([[1, 7], [2, 6], [5, 8], [7, 7], [9, 5], [3, 7]]).r // 4.8792
 */
export function circleTaubin(points: readonly XY[]): Circle {
  checkCirclePoints(points);
  const { points: moved, back } = centred(points);
  const n = moved.length;
  const squares = moved.map(([x, y]) => x * x + y * y);
  const mean = squares.reduce((sum, z) => sum + z, 0) / n;
  // With A = a0 / (2 sqrt(mean)) the constraint becomes length one, and the smallest eigenvector is the answer.
  const rows = moved.map(([x, y], i) => [((squares[i] ?? 0) - mean) / (2 * Math.sqrt(mean)), x, y]);
  const three = [0, 1, 2];
  const normal = three.map((i) =>
    three.map((j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
  );
  const [a0 = 0, b = 0, c = 0] = symmetricEigen(normal).vectors[0] ?? [];
  const a = a0 / (2 * Math.sqrt(mean));
  const d = -mean * a;
  const inside = (b * b + c * c - 4 * a * d) / (4 * a * a);
  if (!(inside > 0) || !Number.isFinite(inside)) throw new RangeError('No circle fits the points.');
  return back({ x: -b / (2 * a), y: -c / (2 * a), r: Math.sqrt(inside) });
}
