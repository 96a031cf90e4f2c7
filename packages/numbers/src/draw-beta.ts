import { drawDirichlet } from './draw-dirichlet.ts';

/**
 * One draw from the Beta distribution.
 *
 * @param random - uniform numbers, 0 <= x < 1
 * @param a - > 0
 * @param b - > 0
 * @returns a share, 0..1
 * @throws RangeError when a or b is not positive
 * @source two gamma variates (Devroye 1986, chapter IX.3)
 * @example drawBeta(seededRandom(1), 6.5, 4.5)
 */
export function drawBeta(random: () => number, a: number, b: number): number {
  return drawDirichlet(random, [a, b])[0] ?? 0;
}
