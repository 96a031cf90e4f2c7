/**
 * Noisy-OR: the chance of an effect when each cause that is present may bring it about on its own.
 *
 * @param leak - chance without any listed cause, 0..1
 * @param weights - chance that each present cause brings it about, 0..1
 * @returns probability, 0..1
 * @throws RangeError when a probability lies outside 0..1
 * @source Pearl 1988, Probabilistic Reasoning in Intelligent Systems, section 4.3.2
 * @example noisyOr(0.05, [0.6, 0.3]) // 0.734
 */
export function noisyOr(leak: number, weights: readonly number[]): number {
  let without = 1;
  for (const p of [leak, ...weights]) {
    if (!(p >= 0 && p <= 1)) throw new RangeError('Probabilities lie between 0 and 1.');
    without *= 1 - p;
  }
  return 1 - without;
}
