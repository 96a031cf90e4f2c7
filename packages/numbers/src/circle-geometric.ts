import { type Circle, centred, checkCirclePoints, type XY } from './circle.ts';
import { circleTaubin } from './circle-taubin.ts';
import { leastSquares } from './least-squares.ts';

export type FittedCircle = Circle & { readonly sumOfSquares: number };

/**
 * Circle with the least sum of squared distances of the points from it.
 *
 * @param points - at least three, not on one line
 * @throws RangeError on points that no circle fits, or when the search does not settle
 * @source Gander, Golub & Strebel 1994, BIT 34:558, section 3; started from Taubin's fit
 * @example circleGeometric([[1, 7], [2, 6], [5, 8], [7, 7], [9, 5], [3, 7]]).r // 4.7142
 */
export function circleGeometric(points: readonly XY[]): FittedCircle {
  checkCirclePoints(points);
  const start = circleTaubin(points);
  const { points: moved, back } = centred(points);
  const origin = back({ x: 0, y: 0, r: 1 });
  const from = [(start.x - origin.x) / origin.r, (start.y - origin.y) / origin.r, start.r / origin.r];
  const { parameters, sumOfSquares } = leastSquares({
    residuals: ([x = 0, y = 0, r = 0]) => moved.map(([px, py]) => Math.hypot(px - x, py - y) - r),
    start: from,
    steps: from.map((value) => 1e-6 * Math.max(1, Math.abs(value))),
  });
  const [x = 0, y = 0, r = 0] = parameters;
  return { ...back({ x, y, r }), sumOfSquares: sumOfSquares * origin.r ** 2 };
}
