import { normalCdf } from './normal-cdf.ts';

/**
 * Standard normal quantile: the z below which a share p lies.
 *
 * @param p - probability, strictly between 0 and 1
 * @returns z; absolute error below 1e-9 for p in 1e-12..1 - 1e-12
 * @throws RangeError when p is not strictly between 0 and 1
 * @source start from Abramowitz & Stegun 26.2.23, then Halley steps on the distribution function
 * @example normalQuantile(0.8) // 0.8416212335729143
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError('A quantile needs a probability strictly between 0 and 1.');
  if (p > 0.5) return -normalQuantile(1 - p);
  const t = Math.sqrt(-2 * Math.log(p));
  let z =
    -t +
    (2.515517 + 0.802853 * t + 0.010328 * t * t) / (1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t ** 3);
  for (let step = 0; step < 3; step += 1) {
    const miss = ((normalCdf(z) - p) * Math.sqrt(2 * Math.PI)) / Math.exp((-z * z) / 2);
    z -= miss / (1 + (z * miss) / 2);
  }
  return z;
}
