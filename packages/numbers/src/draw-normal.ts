/**
 * One draw from the standard normal distribution.
 *
 * @param random - uniform numbers, 0 <= x < 1
 * @source Box & Muller 1958 (the cosine half)
 * @example drawNormal(seededRandom(1))
 */
export function drawNormal(random: () => number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}
