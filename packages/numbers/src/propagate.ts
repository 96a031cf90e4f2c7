import { gradient } from './gradient.ts';
import { varianceOf } from './variance-of.ts';

export type Propagated = {
  /** The model at the inputs. */
  readonly value: number;
  /** Combined standard uncertainty, same unit. */
  readonly u: number;
  readonly sensitivities: readonly number[];
};

/**
 * Law of propagation of uncertainty with a numeric Jacobian (step: a hundredth of each input's own uncertainty).
 *
 * @param f - the model: inputs to one output
 * @param x - estimates of the inputs
 * @param covariance - covariance of the inputs; a zero variance means an exact input
 * @returns value, combined standard uncertainty and sensitivities
 * @throws RangeError on sizes that differ, a matrix that is not a covariance, or a model that is not finite
 * @source JCGM 100:2008, equation 13; checked against its examples H.1 and H.2. First order only.
 * @example propagate(([a = 0, b = 0]) => a - b, [5, 3], [[9, 0], [0, 16]]).u // 5
 */
export function propagate(
  f: (x: readonly number[]) => number,
  x: readonly number[],
  covariance: readonly (readonly number[])[],
): Propagated {
  const value = f(x);
  if (!Number.isFinite(value)) throw new RangeError('The model is not finite at the inputs.');
  const steps = x.map((xi, i) => {
    const u = Math.sqrt(Math.max(0, covariance[i]?.[i] ?? 0));
    return u > 0 ? u / 100 : 1e-6 * Math.max(1, Math.abs(xi));
  });
  const sensitivities = gradient(f, x, steps);
  return { value, u: Math.sqrt(varianceOf(sensitivities, covariance)), sensitivities };
}
