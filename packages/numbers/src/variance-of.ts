/**
 * Variance of a linear combination: g' C g, never below zero.
 *
 * @param sensitivities - g, one for each input
 * @param covariance - C, square and symmetric, in the units of the inputs
 * @returns variance in the squared unit of the output
 * @throws RangeError when the sizes differ, the matrix is not symmetric or a variance is negative
 * @source JCGM 100:2008, equation 13
 * @example varianceOf([1, -1], [[4, 1], [1, 4]]) // 6
 */
export function varianceOf(
  sensitivities: readonly number[],
  covariance: readonly (readonly number[])[],
): number {
  const n = sensitivities.length;
  if (covariance.length !== n) throw new RangeError('The covariance does not fit the inputs.');
  let sum = 0;
  for (let i = 0; i < n; i += 1) {
    const row = covariance[i] ?? [];
    const gi = sensitivities[i] ?? 0;
    const variance = row[i] ?? Number.NaN;
    if (row.length !== n) throw new RangeError('The covariance is not square.');
    if (!(variance >= 0)) throw new RangeError(`Variance ${i} is negative or missing.`);
    sum += gi * variance * gi;
    for (let j = 0; j < i; j += 1) {
      const cij = row[j] ?? 0;
      const cji = covariance[j]?.[i] ?? 0;
      if (cij === 0 && cji === 0) continue;
      if (Math.abs(cij - cji) > 1e-9 * (1 + Math.abs(cij))) {
        throw new RangeError('The covariance is not symmetric.');
      }
      sum += 2 * gi * cij * (sensitivities[j] ?? 0);
    }
  }
  return Math.max(0, sum);
}
