/**
 * A number held between two edges.
 *
 * @throws RangeError when the value is not a number or the edges are crossed
 * @example clip(7, -3, 3) // 3
 */
export function clip(value: number, low: number, high: number): number {
  if (Number.isNaN(value) || !(low <= high)) throw new RangeError('Nothing to clip.');
  return Math.min(high, Math.max(low, value));
}
