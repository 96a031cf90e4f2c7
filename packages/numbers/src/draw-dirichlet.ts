import { drawGamma } from './draw-gamma.ts';

/**
 * One draw of shares from a Dirichlet distribution; with two weights it is a Beta draw and its complement.
 *
 * @param random - uniform numbers, 0 <= x < 1
 * @param weights - one for each share, all > 0
 * @returns shares that sum to 1, in the order of the weights
 * @throws RangeError when there is no weight or one is not positive
 * @source gamma variates divided by their sum (Devroye 1986, chapter XI.4)
 * @example drawDirichlet(seededRandom(1), [0.5, 6.5, 3.5])
 */
export function drawDirichlet(random: () => number, weights: readonly number[]): readonly number[] {
  if (weights.length === 0) throw new RangeError('A Dirichlet draw needs at least one weight.');
  const parts = weights.map((weight) => drawGamma(random, weight));
  const sum = parts.reduce((total, part) => total + part, 0);
  return parts.map((part) => part / sum);
}
