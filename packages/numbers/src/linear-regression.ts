import { checkFinite } from './check-finite.ts';

export type Line = {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptSd: number;
  readonly slopeSd: number;
  readonly residualSd: number;
  readonly rSquared: number;
  readonly sumOfSquares: number;
};

/**
 * Straight line through values by least squares, with the standard deviations of its two numbers.
 *
 * @param x - at least three, not all the same
 * @param y - as many
 * @throws RangeError on unequal lengths, a value that is not finite, or x that are all the same
 * @source centred normal equations; held to NIST StRD Norris to nine digits
 * @example linearRegression([1, 2, 3], [2, 4.1, 5.9]).slope // 1.95
 */
export function linearRegression(x: readonly number[], y: readonly number[]): Line {
  checkFinite('x', x, 3);
  checkFinite('y', y, 3);
  const n = x.length;
  if (y.length !== n) throw new RangeError('Each y needs its x.');
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / n;
  const [mx, my] = [mean(x), mean(y)];
  let [sxx, sxy, syy] = [0, 0, 0];
  x.forEach((xi, i) => {
    const [dx, dy] = [xi - mx, (y[i] ?? 0) - my];
    sxx += dx * dx;
    sxy += dx * dy;
    syy += dy * dy;
  });
  if (!(sxx > 0)) throw new RangeError('All x are the same: no line.');
  const slope = sxy / sxx;
  const intercept = my - slope * mx;
  const sumOfSquares = x.reduce((sum, xi, i) => sum + ((y[i] ?? 0) - my - slope * (xi - mx)) ** 2, 0);
  const residualSd = Math.sqrt(sumOfSquares / (n - 2));
  return {
    intercept,
    slope,
    interceptSd: residualSd * Math.sqrt(1 / n + (mx * mx) / sxx),
    slopeSd: residualSd / Math.sqrt(sxx),
    residualSd,
    rSquared: syy > 0 ? 1 - sumOfSquares / syy : 1,
    sumOfSquares,
  };
}
