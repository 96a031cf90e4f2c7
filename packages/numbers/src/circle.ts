import { checkFinite } from './check-finite.ts';

export type XY = readonly [x: number, y: number];
export type Circle = { readonly x: number; readonly y: number; readonly r: number };

/**
 * Lets points pass through which one circle can be laid.
 *
 * @throws RangeError on fewer than three different points, a number that is not finite, or points on one line
 */
export function checkCirclePoints(points: readonly XY[]): void {
  checkFinite('coordinates', points.flat(), 6);
  const [first, ...rest] = points;
  const apart = (p: XY, q: XY) => Math.hypot(p[0] - q[0], p[1] - q[1]);
  const far = rest.reduce<XY | undefined>(
    (best, one) => (first && (best === undefined || apart(one, first) > apart(best, first)) ? one : best),
    undefined,
  );
  if (first === undefined || far === undefined) throw new RangeError('A circle needs three points.');
  const length = apart(first, far);
  if (!(length > 0)) throw new RangeError('The points of the circle coincide.');
  const [dx, dy] = [far[0] - first[0], far[1] - first[1]];
  const off = Math.max(
    ...points.map(([x, y]) => Math.abs((x - first[0]) * dy - (y - first[1]) * dx) / length),
  );
  if (!(off > 1e-9 * length)) throw new RangeError('The points of the circle lie on one line.');
}

/** The points with their middle at 0, 0 and a mean distance of 1 from it, and the way back. */
export function centred(points: readonly XY[]): {
  readonly points: readonly XY[];
  back(circle: Circle): Circle;
} {
  const n = points.length;
  const mx = points.reduce((sum, [x]) => sum + x, 0) / n;
  const my = points.reduce((sum, [, y]) => sum + y, 0) / n;
  const size = points.reduce((sum, [x, y]) => sum + Math.hypot(x - mx, y - my), 0) / n;
  return {
    points: points.map(([x, y]): XY => [(x - mx) / size, (y - my) / size]),
    back: ({ x, y, r }) => ({ x: x * size + mx, y: y * size + my, r: r * size }),
  };
}
