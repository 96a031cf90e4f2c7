import { checkFinite } from './check-finite.ts';

export type Pooled = {
  /** Mean of all groups and its standard deviation, the spread between groups integrated out. */
  readonly mean: number;
  readonly sd: number;
  /** Posterior mean of the spread between groups. */
  readonly tau: number;
  /** Posterior mean and standard deviation of each group, drawn towards the others. */
  readonly groups: readonly { readonly mean: number; readonly sd: number }[];
};

const steps = 1000;

/**
 * Effects of several groups, each drawn towards the common mean as far as the data ask for: normal model with a flat
 * prior on the mean and on the spread between groups, which is integrated, not plugged in.
 *
 * @param effects - at least three
 * @param standardErrors - as many, each > 0
 * @throws RangeError on unequal lengths, fewer than three groups, or a standard error that is not positive
 * @source Gelman et al., Bayesian Data Analysis, section 5.4; held to Rubin's eight schools (1981)
 * @example partialPooling([28, 8, -3], [15, 10, 16]).groups[0]?.mean
 */
export function partialPooling(effects: readonly number[], standardErrors: readonly number[]): Pooled {
  checkFinite('effects', effects, 3);
  checkFinite('standard errors', standardErrors, 3);
  if (effects.length !== standardErrors.length) throw new RangeError('Each effect needs its standard error.');
  const wrong = standardErrors.findIndex((se) => !(se > 0));
  if (wrong >= 0) throw new RangeError(`Standard error ${wrong + 1} is not positive.`);
  const mean = effects.reduce((sum, y) => sum + y, 0) / effects.length;
  const size = Math.hypot(...effects.map((y) => y - mean)) + Math.max(...standardErrors);

  // tau = size tan(pi v / 2) maps the whole half line onto 0..1; the middle of each step is taken.
  const grid = Array.from({ length: steps }, (_, i) => {
    const angle = (Math.PI * (i + 0.5)) / (2 * steps);
    const tau = size * Math.tan(angle);
    return { ...given(effects, standardErrors, tau), tau, stretch: 2 * Math.log(1 / Math.cos(angle)) };
  });
  const highest = Math.max(...grid.map(({ logDensity, stretch }) => logDensity + stretch));
  const weights = grid.map(({ logDensity, stretch }) => Math.exp(logDensity + stretch - highest));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const average = (of: (i: number) => number) =>
    weights.reduce((sum, weight, i) => sum + weight * of(i), 0) / total;
  const joined = (at: (i: number) => { readonly mean: number; readonly variance: number }) => {
    const centre = average((i) => at(i).mean);
    const variance = average((i) => at(i).variance + (at(i).mean - centre) ** 2);
    return { mean: centre, sd: Math.sqrt(variance) };
  };
  const none = { mean: Number.NaN, variance: Number.NaN };
  return {
    ...joined((i) => grid[i]?.common ?? none),
    tau: average((i) => grid[i]?.tau ?? Number.NaN),
    groups: effects.map((_, j) => joined((i) => grid[i]?.groups[j] ?? none)),
  };
}

/** The model for one spread tau: log density up to a constant, the common mean, each group. */
function given(effects: readonly number[], standardErrors: readonly number[], tau: number) {
  const precisions = standardErrors.map((se) => 1 / (se * se + tau * tau));
  const precision = precisions.reduce((sum, p) => sum + p, 0);
  const mean = effects.reduce((sum, y, j) => sum + y * (precisions[j] ?? 0), 0) / precision;
  let logDensity = -Math.log(precision) / 2;
  effects.forEach((y, j) => {
    const p = precisions[j] ?? 0;
    logDensity += Math.log(p) / 2 - (p * (y - mean) ** 2) / 2;
  });
  const groups = effects.map((y, j) => {
    const own = (standardErrors[j] ?? 0) ** 2;
    const drawn = own / (own + tau * tau);
    return {
      mean: drawn * mean + (1 - drawn) * y,
      variance: (1 - drawn) * own + (drawn * drawn) / precision,
    };
  });
  return { logDensity, common: { mean, variance: 1 / precision }, groups };
}
