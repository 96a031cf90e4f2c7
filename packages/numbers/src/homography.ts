import { checkFinite } from './check-finite.ts';
import type { XY } from './circle.ts';
import { solveLinear } from './solve-linear.ts';

/** Three rows of three, the last number 1. */
export type Homography = readonly (readonly [number, number, number])[];

const cross = ([ax, ay]: XY, [bx, by]: XY, [cx, cy]: XY) => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** @throws RangeError when two of four points coincide or three lie on one line */
function checkFour(what: string, points: readonly XY[]): void {
  if (points.length !== 4) throw new RangeError(`A homography needs four ${what} points.`);
  checkFinite(`${what} coordinates`, points.flat());
  const size = Math.max(...points.flat().map(Math.abs)) ** 2;
  for (let skip = 0; skip < 4; skip += 1) {
    const [a, b, c] = points.filter((_, i) => i !== skip);
    if (a === undefined || b === undefined || c === undefined) continue;
    if (Math.abs(cross(a, b, c)) <= 1e-12 * size)
      throw new RangeError(`Three ${what} points lie on one line.`);
  }
}

/**
 * How one plane is seen as another: the matrix that carries four points to four points.
 *
 * @param from - four points, no three on one line
 * @param to - where they lie in the other plane, no three on one line
 * @throws RangeError when the points cannot fix it
 * @source eight linear equations (Hartley & Zisserman, Multiple View Geometry, section 4.1)
 * @example homography([[0, 0], [1, 0], [1, 1], [0, 1]], corners)
 */
export function homography(from: readonly XY[], to: readonly XY[]): Homography {
  checkFour('source', from);
  checkFour('target', to);
  const equations: number[][] = [];
  const right: number[][] = [];
  from.forEach(([x, y], i) => {
    const [u, v] = to[i] ?? [0, 0];
    equations.push([x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]);
    right.push([u], [v]);
  });
  const h = solveLinear(equations, right).map(([value = 0]) => value);
  const at = (i: number) => h[i] ?? 1;
  return [0, 3, 6].map((i) => [at(i), at(i + 1), at(i + 2)] as const);
}

/**
 * Where a point lies in the other plane.
 *
 * @throws RangeError when it lies at infinity there
 */
export function throughHomography(h: Homography, [x, y]: XY): XY {
  const [u = 0, v = 0, w = 0] = h.map(([a, b, c]) => a * x + b * y + c);
  if (!(Math.abs(w) > 1e-12)) throw new RangeError('The point lies at infinity in the other plane.');
  return [u / w, v / w];
}
