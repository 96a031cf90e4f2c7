// Bernoulli terms of Stirling's series, B2k / (2k (2k - 1)).
const stirling = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360_360, 1 / 156] as const;

/**
 * Natural logarithm of the gamma function.
 *
 * @param x - > 0
 * @returns relative error below 1e-13
 * @throws RangeError when x is not positive and finite
 * @source Stirling's series after shifting x above 10 (Abramowitz & Stegun 6.1.40)
 * @example logGamma(5) // ln 24
 */
export function logGamma(x: number): number {
  if (!(x > 0 && Number.isFinite(x))) throw new RangeError('The gamma function needs a positive number.');
  let shifted = x;
  let product = 1;
  while (shifted < 10) {
    product *= shifted;
    shifted += 1;
  }
  const square = shifted * shifted;
  let term = 1 / shifted;
  let series = 0;
  for (const coefficient of stirling) {
    series += coefficient * term;
    term /= square;
  }
  return (
    (shifted - 0.5) * Math.log(shifted) - shifted + Math.log(2 * Math.PI) / 2 + series - Math.log(product)
  );
}
