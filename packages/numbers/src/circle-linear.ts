import { type Circle, centred, checkCirclePoints, type XY } from './circle.ts';
import { solveLinear } from './solve-linear.ts';

/**
 * Circle by linear least squares of x^2 + y^2 on x, y and 1. Quick; short arcs come out too small.
 *
 * @param points - at least three, not on one line
 * @throws RangeError on points that no circle fits
 * @source Kåsa 1976, IEEE Transactions on Instrumentation and Measurement 25:8
 * @example circleLinear([[1, 7], [2, 6], [5, 8], [7, 7], [9, 5], [3, 7]]).r // 4.1088
 */
export function circleLinear(points: readonly XY[]): Circle {
  checkCirclePoints(points);
  const { points: moved, back } = centred(points);
  const rows = moved.map(([x, y]) => [x, y, 1, x * x + y * y] as const);
  const three = [0, 1, 2] as const;
  const sum = (i: number, j: number) => rows.reduce((total, row) => total + (row[i] ?? 0) * (row[j] ?? 0), 0);
  const [[p = 0] = [], [q = 0] = [], [s = 0] = []] = solveLinear(
    three.map((i) => three.map((j) => sum(i, j))),
    three.map((i) => [sum(i, 3)]),
  );
  return back({ x: p / 2, y: q / 2, r: Math.sqrt(s + (p * p + q * q) / 4) });
}
