const upper = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
] as const;
const lower = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
] as const;

const horner = (coefficients: readonly number[], x: number) =>
  coefficients.reduce((sum, c) => sum * x + c, 0);

/**
 * Standard normal distribution function.
 *
 * @param z - standard deviations from the mean, may be infinite
 * @returns P(Z <= z), 0..1; absolute error below 1e-14
 * @throws RangeError when z is not a number
 * @source Hart 1968, algorithm 5666, as given by West 2005, "Better approximations to cumulative normal functions"
 * @example normalCdf(1.959963984540054) // 0.975
 */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) throw new RangeError('z is not a number.');
  const a = Math.abs(z);
  let tail = 0;
  if (a <= 37) {
    const bell = Math.exp((-a * a) / 2);
    tail =
      a < 7.07106781186547
        ? (bell * horner(upper, a)) / horner(lower, a)
        : bell / (a + 1 / (a + 2 / (a + 3 / (a + 4 / (a + 0.65))))) / Math.sqrt(2 * Math.PI);
  }
  return z > 0 ? 1 - tail : tail;
}
