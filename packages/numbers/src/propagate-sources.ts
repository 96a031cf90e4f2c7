import { gradient } from './gradient.ts';

/** What 1 SD of each of a few independent sources moves an input: `effects[i]` belongs to source `sources[i]`. */
export type FeltSources = { readonly sources: readonly number[]; readonly effects: readonly number[] };

export type PropagatedSources = {
  /** The model at the inputs. */
  readonly value: number;
  /** Combined standard uncertainty, same unit. */
  readonly u: number;
  /** What 1 SD of each source moves the output. */
  readonly felt: FeltSources;
};

/**
 * Law of propagation of uncertainty where the errors of the inputs are sums of independent sources, so that inputs which
 * share a source are correlated by it. The same as `propagate` with the covariance of the inputs written out.
 *
 * @param f - the model: inputs to one output
 * @param x - estimates of the inputs
 * @param felt - the sources of each input
 * @param count - how many sources there are
 * @throws RangeError on sizes that differ, a source out of range, or a model that is not finite
 * @source JCGM 100:2008, equations 13 and F.2 (correlation by a shared source). First order only.
 * @example propagateSources(([a = 0, b = 0]) => a - b, [5, 3], [{ sources: [0], effects: [3] }, { sources: [1], effects: [4] }], 2).u // 5
 */
export function propagateSources(
  f: (x: readonly number[]) => number,
  x: readonly number[],
  felt: readonly FeltSources[],
  count: number,
): PropagatedSources {
  if (felt.length !== x.length) throw new RangeError('Each input needs its sources.');
  const value = f(x);
  if (!Number.isFinite(value)) throw new RangeError('The model is not finite at the inputs.');
  const steps = x.map((xi, i) => stepOf(felt[i], xi));
  const slopes = gradient(f, x, steps);
  return { value, ...sumSources(slopes, felt, count) };
}

/**
 * The same where the sensitivities are known: what 1 SD of each source moves a sum of inputs, each with its slope.
 *
 * @returns only the sources that any of the inputs feels, and the combined standard uncertainty
 * @throws RangeError when a source is out of range
 * @source JCGM 100:2008, equation 13
 */
export function sumSources(
  slopes: readonly number[],
  felt: readonly FeltSources[],
  count: number,
): Omit<PropagatedSources, 'value'> {
  const place = new Int32Array(count);
  const all: number[] = [];
  const moved: number[] = [];
  for (let i = 0; i < felt.length; i += 1) {
    const { sources, effects } = felt[i] ?? { sources: [], effects: [] };
    const slope = slopes[i] ?? 0;
    for (let k = 0; k < sources.length; k += 1) {
      const source = sources[k] ?? -1;
      if (!(source >= 0 && source < count)) throw new RangeError(`There is no source ${source}.`);
      const effect = slope * (effects[k] ?? 0);
      const at = place[source] ?? 0;
      if (at > 0) moved[at - 1] = (moved[at - 1] ?? 0) + effect;
      else {
        place[source] = all.push(source);
        moved.push(effect);
      }
    }
  }
  let variance = 0;
  for (const effect of moved) variance += effect * effect;
  return { u: Math.sqrt(variance), felt: { sources: all, effects: moved } };
}

/** A hundredth of the input's own uncertainty. */
function stepOf(felt: FeltSources | undefined, x: number): number {
  let variance = 0;
  for (const effect of felt?.effects ?? []) variance += effect * effect;
  return variance > 0 ? Math.sqrt(variance) / 100 : 1e-6 * Math.max(1, Math.abs(x));
}
