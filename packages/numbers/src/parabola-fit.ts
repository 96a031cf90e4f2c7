import { checkFinite } from './check-finite.ts';
import { solveLinear } from './solve-linear.ts';

/** z = a x^2 + b x + c. */
export type Parabola = {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly residualSd: number;
};

/**
 * Parabola through points by least squares.
 *
 * @param x - at least three different places
 * @param z - as many heights
 * @returns residualSd is 0 where three points fix the curve
 * @throws RangeError on unequal lengths, a number that is not finite, or fewer than three different x
 * @source normal equations, centred and scaled
 * @example parabolaFit([-1, 0, 1], [1, 0, 1]) // { a: 1, b: 0, c: 0, residualSd: 0 }
 */
export function parabolaFit(x: readonly number[], z: readonly number[]): Parabola {
  checkFinite('x', x, 3);
  checkFinite('z', z, 3);
  if (x.length !== z.length) throw new RangeError('Each height needs its place.');
  if (new Set(x).size < 3) throw new RangeError('A parabola needs three different places.');
  const middle = x.reduce((sum, value) => sum + value, 0) / x.length;
  const width = Math.max(...x.map((value) => Math.abs(value - middle)));
  const rows = x.map((value) => {
    const u = (value - middle) / width;
    return [u * u, u, 1];
  });
  const powers = [0, 1, 2];
  const normal = powers.map((i) =>
    powers.map((j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
  );
  const right = powers.map((i) => [rows.reduce((sum, row, k) => sum + (row[i] ?? 0) * (z[k] ?? 0), 0)]);
  const [[p = 0] = [], [q = 0] = [], [r = 0] = []] = solveLinear(normal, right);
  const a = p / width ** 2;
  const b = q / width - 2 * a * middle;
  const c = r - (q * middle) / width + a * middle ** 2;
  const squares = x.reduce(
    (sum, value, i) => sum + ((z[i] ?? 0) - (a * value * value + b * value + c)) ** 2,
    0,
  );
  return { a, b, c, residualSd: x.length > 3 ? Math.sqrt(squares / (x.length - 3)) : 0 };
}
