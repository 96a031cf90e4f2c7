import type { Known } from './arc-question.ts';

export type LowPointSpread = {
  readonly meanMm: number;
  /** Standard deviation of the player's own low points, without what the marks add. */
  readonly spreadMm: number;
  /** Standard deviation that a next swing is predicted with, and its degrees of freedom. */
  readonly predictiveMm: number;
  readonly degrees: number;
};

/**
 * How far the low points of one set-up scatter.
 *
 * @param lowPoints - at least two, each with the doubt of its own marks (not what all share)
 * @throws RangeError on fewer than two, or a number that is not finite
 * @source s_L^2 = max(0, s^2 - mean u^2), predictive t on n - 1 degrees; derived here
 * @example lowPointSpread([{ value: 90, u: 12 }, { value: 60, u: 12 }, { value: 40, u: 14 }])
 */
export function lowPointSpread(lowPoints: readonly Known[]): LowPointSpread {
  const n = lowPoints.length;
  if (n < 2 || n > 1000) throw new RangeError('A spread needs 2 to 1,000 low points.');
  const wrong = lowPoints.findIndex(({ value, u }) => !Number.isFinite(value) || !(u >= 0));
  if (wrong >= 0) throw new RangeError(`Low point ${wrong + 1} is not a number with a doubt.`);
  const mean = (values: readonly number[]) => values.reduce((sum, x) => sum + x, 0) / values.length;
  const meanMm = mean(lowPoints.map(({ value }) => value));
  const s2 = lowPoints.reduce((sum, { value }) => sum + (value - meanMm) ** 2, 0) / (n - 1);
  const spread2 = Math.max(0, s2 - mean(lowPoints.map(({ u }) => u * u)));
  return {
    meanMm,
    spreadMm: Math.sqrt(spread2),
    predictiveMm: Math.sqrt(spread2 + s2 / n),
    degrees: n - 1,
  };
}
