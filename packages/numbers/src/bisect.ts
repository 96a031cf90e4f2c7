/**
 * Where a function that grows crosses a value, by halving.
 *
 * @param f - grows from low to high
 * @param within - how wide the place may be left; 0: to the last bit that halving can give in 200 steps
 * @throws RangeError when the edges are not finite or crossed
 * @example bisect((x) => x * x, 2, 0, 2) // 1.4142135623730951
 */
export function bisect(
  f: (x: number) => number,
  value: number,
  low: number,
  high: number,
  within = 0,
): number {
  if (!(Number.isFinite(low) && Number.isFinite(high) && low <= high)) {
    throw new RangeError('Halving needs two finite edges.');
  }
  let [below, above] = [low, high];
  for (let step = 0; step < 200; step += 1) {
    const middle = (below + above) / 2;
    if (middle === below || middle === above || above - below <= within) break;
    if (f(middle) < value) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
