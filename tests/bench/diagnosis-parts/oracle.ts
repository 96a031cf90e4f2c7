import { inverse, Matrix } from 'ml-matrix';
import type { SeenSwing } from './seen-swing.ts';

/** Values of the readings in one order; a missing one stands at its mean. */
const rowOf = (swing: SeenSwing, keys: readonly string[], means: readonly number[]): number[] => {
  const byKey = new Map(swing.readings.map(({ key, value }) => [key, value]));
  return keys.map((key, i) => byKey.get(key) ?? means[i] ?? 0);
};
const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Bayes with the generator's own parameters: for each cause the mean of everything measured, and one covariance of golfers,
 * cameras and clicks together, both learned from swings of the generator that are not tested. It knows how errors go
 * together; we are told only how large each is.
 *
 * @param training - swings by the cause planted in them
 * @returns which cause a swing shows most likely, all being equally common
 * @source linear discriminant analysis (Fisher 1936)
 */
export function oracleOf(training: ReadonlyMap<string, readonly SeenSwing[]>): (swing: SeenSwing) => string {
  const all = [...training.values()].flat();
  const keys = [...new Set(all.flatMap(({ readings }) => readings.map(({ key }) => key)))].sort();
  const means = keys.map((key) =>
    meanOf(
      all.flatMap(({ readings }) => readings.filter((one) => one.key === key).map(({ value }) => value)),
    ),
  );
  const centres = new Map<string, number[]>();
  const residuals: number[][] = [];
  for (const [cause, swings] of training) {
    const rows = swings.map((swing) => rowOf(swing, keys, means));
    const centre = keys.map((_, i) => meanOf(rows.map((row) => row[i] ?? 0)));
    centres.set(cause, centre);
    residuals.push(...rows.map((row) => row.map((value, i) => value - (centre[i] ?? 0))));
  }
  const spread = keys.map((_, i) => Math.sqrt(meanOf(residuals.map((row) => (row[i] ?? 0) ** 2))) || 1);
  const scaled = new Matrix(residuals.map((row) => row.map((value, i) => value / (spread[i] ?? 1))));
  const covariance = scaled.transpose().mmul(scaled).div(residuals.length);
  // Nearly equal readings (mm and per cent) would make it singular.
  const precision = inverse(covariance.add(Matrix.eye(keys.length).mul(0.02)));
  const distance = (row: readonly number[], centre: readonly number[]): number => {
    const away = Matrix.rowVector(row.map((value, i) => (value - (centre[i] ?? 0)) / (spread[i] ?? 1)));
    return away.mmul(precision).mmul(away.transpose()).get(0, 0);
  };
  return (swing) => {
    const row = rowOf(swing, keys, means);
    const ranked = [...centres].map(([cause, centre]) => ({ cause, off: distance(row, centre) }));
    return ranked.reduce((best, one) => (one.off < best.off ? one : best)).cause;
  };
}
