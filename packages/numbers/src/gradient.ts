/**
 * Numeric gradient of a function of several inputs by central differences.
 *
 * @param f - the model, finite near `x`
 * @param x - where the gradient is taken
 * @param steps - half-width of the difference by input, in the unit of that input, each > 0
 * @returns df/dx_i, one for each input
 * @throws RangeError when the lengths differ, a step is not positive or the model is not finite beside `x`
 * @source JCGM 100:2008, 5.1.3 note 2 (sensitivities from differences of the model)
 * @example gradient(([a = 0, b = 0]) => a * b, [2, 3], [1e-3, 1e-3]) // close to [3, 2]
 */
export function gradient(
  f: (x: readonly number[]) => number,
  x: readonly number[],
  steps: readonly number[],
): readonly number[] {
  if (steps.length !== x.length) throw new RangeError('One step is needed for each input.');
  const moved = [...x];
  return x.map((xi, i) => {
    const step = steps[i] ?? 0;
    if (!(step > 0)) throw new RangeError(`Step ${i} must be positive.`);
    moved[i] = xi + step;
    const above = f(moved);
    moved[i] = xi - step;
    const below = f(moved);
    moved[i] = xi;
    const slope = (above - below) / (2 * step);
    if (!Number.isFinite(slope)) throw new RangeError(`The model is not finite beside input ${i}.`);
    return slope;
  });
}
