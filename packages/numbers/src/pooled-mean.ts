import { checkFinite } from './check-finite.ts';

export type PooledMean = { readonly mean: number; readonly se: number; readonly q: number };

/**
 * One mean of several estimates, each weighted by its own precision, and Cochran's Q for how far they disagree.
 *
 * @param effects - at least one
 * @param standardErrors - as many, each > 0
 * @throws RangeError on unequal lengths or a standard error that is not positive
 * @source Cochran 1954, Biometrics 10:101
 * @example pooledMean([10, 20], [1, 1]) // { mean: 15, se: 0.7071, q: 50 }
 */
export function pooledMean(effects: readonly number[], standardErrors: readonly number[]): PooledMean {
  checkFinite('effects', effects, 1);
  checkFinite('standard errors', standardErrors, 1);
  if (effects.length !== standardErrors.length) throw new RangeError('Each effect needs its standard error.');
  const wrong = standardErrors.findIndex((se) => !(se > 0));
  if (wrong >= 0) throw new RangeError(`Standard error ${wrong + 1} is not positive.`);
  const precisions = standardErrors.map((se) => 1 / (se * se));
  const precision = precisions.reduce((sum, p) => sum + p, 0);
  const mean = effects.reduce((sum, y, i) => sum + y * (precisions[i] ?? 0), 0) / precision;
  const q = effects.reduce((sum, y, i) => sum + (precisions[i] ?? 0) * (y - mean) ** 2, 0);
  return { mean, se: 1 / Math.sqrt(precision), q };
}
