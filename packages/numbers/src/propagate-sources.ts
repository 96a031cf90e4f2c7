import { gradient } from './gradient.ts';

/** What 1 SD of each of a few independent sources moves an input: `effects[i]` belongs to source `sources[i]`. */
export type FeltSources = { readonly sources: readonly number[]; readonly effects: readonly number[] };

export type PropagatedSources = {
  /** The model at the inputs. */
  readonly value: number;
  /** Combined standard uncertainty, same unit. */
  readonly u: number;
  /** What 1 SD of each source moves the output, by number of the source. */
  readonly effects: Float64Array;
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
  const effects = new Float64Array(count);
  felt.forEach(({ sources, effects: own }, i) => {
    const slope = slopes[i] ?? 0;
    for (let k = 0; k < sources.length; k += 1) {
      const source = sources[k] ?? -1;
      if (!(source >= 0 && source < count)) throw new RangeError(`There is no source ${source}.`);
      effects[source] = (effects[source] ?? 0) + slope * (own[k] ?? 0);
    }
  });
  let variance = 0;
  for (const effect of effects) variance += effect * effect;
  return { value, u: Math.sqrt(variance), effects };
}

/** A hundredth of the input's own uncertainty. */
function stepOf(felt: FeltSources | undefined, x: number): number {
  let variance = 0;
  for (const effect of felt?.effects ?? []) variance += effect * effect;
  return variance > 0 ? Math.sqrt(variance) / 100 : 1e-6 * Math.max(1, Math.abs(x));
}
