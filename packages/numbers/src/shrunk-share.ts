export type Population = { readonly mean: number; readonly sd: number };

/**
 * How much of the spread between counted shares is the players' own: the rest is luck.
 *
 * @param population - mean share strictly between 0 and 1, and true standard deviation between players
 * @param n - balls counted, at least 1
 * @throws RangeError on numbers out of range
 * @source s^2 / (s^2 + p (1 - p) / n), binomial variance at the mean
 * @example shareReliability({ mean: 0.35, sd: 0.12 }, 10) // 0.388
 */
export function shareReliability({ mean, sd }: Population, n: number): number {
  if (!(mean > 0 && mean < 1 && sd >= 0)) throw new RangeError('A population has a mean share and a spread.');
  if (!(n >= 1 && Number.isFinite(n))) throw new RangeError('At least one ball is counted.');
  return (sd * sd) / (sd * sd + (mean * (1 - mean)) / n);
}

/**
 * The share to expect next time when nothing is done: drawn towards the population.
 *
 * @throws RangeError on numbers out of range
 * @source regression to the mean (Galton), with `shareReliability`
 * @example 10 * expectedAgain(0.6, { mean: 0.35, sd: 0.12 }, 10) // 4.5
 */
export function expectedAgain(share: number, population: Population, n: number): number {
  if (!(share >= 0 && share <= 1)) throw new RangeError('A share lies between 0 and 1.');
  return population.mean + shareReliability(population, n) * (share - population.mean);
}
