import { drawNormal } from './draw-normal.ts';

/**
 * One draw from the gamma distribution with scale 1.
 *
 * @param random - uniform numbers, 0 <= x < 1
 * @param shape - > 0
 * @throws RangeError when the shape is not positive
 * @source Marsaglia & Tsang 2000, ACM TOMS 26:363; below shape 1 by their boost with a uniform power
 * @example drawGamma(seededRandom(1), 2.5)
 */
export function drawGamma(random: () => number, shape: number): number {
  if (!(shape > 0 && shape < Number.POSITIVE_INFINITY)) throw new RangeError('A gamma shape is positive.');
  if (shape < 1) return drawGamma(random, shape + 1) * (1 - random()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = drawNormal(random);
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    if (Math.log(1 - random()) < (x * x) / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
}
