/**
 * A sample quantile by linear interpolation between order statistics.
 *
 * @param values - finite numbers in any order, at least one
 * @param share - 0..1; 0.5 is the median
 * @throws RangeError on no values, a value that is not finite, or a share outside 0..1
 * @source Hyndman & Fan 1996, The American Statistician 50:361, definition 7
 * @example quantile([1, 2, 3, 4], 0.5) // 2.5
 */
export function quantile(values: readonly number[], share: number): number {
  if (values.length === 0) throw new RangeError('A quantile needs at least one value.');
  if (!values.every(Number.isFinite)) throw new RangeError('A quantile needs finite values.');
  if (!(share >= 0 && share <= 1)) throw new RangeError('A share lies between 0 and 1.');
  const sorted = values.toSorted((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const [low, high] = [sorted[below] ?? 0, sorted[Math.min(below + 1, sorted.length - 1)] ?? 0];
  return low + (high - low) * (place - below);
}
