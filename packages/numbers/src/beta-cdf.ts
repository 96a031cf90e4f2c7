import { logGamma } from './log-gamma.ts';

const tiny = 1e-300;

/** Continued fraction of the incomplete beta function, by the method of Lentz. */
function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / Math.max(tiny, 1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= 10_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    for (const term of [even, odd]) {
      const below = 1 + term * d;
      d = 1 / (Math.abs(below) < tiny ? tiny : below);
      const above = 1 + term / c;
      c = Math.abs(above) < tiny ? tiny : above;
      value *= c * d;
    }
    if (Math.abs(c * d - 1) < 1e-15) return value;
  }
  throw new RangeError('The incomplete beta function did not settle.');
}

/**
 * Distribution function of the Beta distribution (regularised incomplete beta function).
 *
 * @param x - 0..1
 * @param a - > 0
 * @param b - > 0
 * @returns P(X <= x); absolute error below 1e-12
 * @throws RangeError when x lies outside 0..1 or a or b is not positive
 * @source DLMF 8.17.22 (continued fraction), 8.17.4 (symmetry)
 * @example betaCdf(0.5, 2, 3) // 0.6875
 */
export function betaCdf(x: number, a: number, b: number): number {
  if (!(x >= 0 && x <= 1)) throw new RangeError('A Beta share lies between 0 and 1.');
  if (!(a > 0 && b > 0)) throw new RangeError('Beta weights are positive.');
  if (x === 0 || x === 1) return x;
  if (x > (a + 1) / (a + b + 2)) return 1 - betaCdf(1 - x, b, a);
  const front = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return Math.min(1, (Math.exp(front) * fraction(x, a, b)) / a);
}
