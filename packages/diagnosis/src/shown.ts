import type { Cause } from '@ballfirst/library/types';
import { choleskyOf, inverseCholesky, solveCholesky } from '@ballfirst/numbers/cholesky';
import { errorCovariance } from './error-covariance.ts';
import type { Known } from './evidence.ts';
import { type UsualValue, usualValues } from './usual-values.ts';

/** What a swing shows: all that is read as a sign of any cause, n readings, and how they scatter together. */
export type Shown = {
  readonly values: readonly UsualValue[];
  /** Where each of them stands, by key. */
  readonly place: ReadonlyMap<string, number>;
  /** The inverse of errors and players' spread together, n rows of n. */
  readonly precision: Float64Array;
  /** How far each stands from its usual value, and the precision times that. */
  readonly away: Float64Array;
  readonly pull: Float64Array;
};

/**
 * The readings of a swing, made ready once for all causes.
 *
 * @param library - all causes: a reading that is no sign of one cause may still tell of an error that it shares with one
 * @throws RangeError when a reading is no number
 */
export function shownBy(library: readonly Cause[], seen: Known): Shown {
  const values = usualValues(library, seen);
  const n = values.length;
  const scatter = errorCovariance(values.map(({ reading }) => reading));
  const away = new Float64Array(n);
  values.forEach(({ reading, usual, sd }, i) => {
    scatter[i * n + i] = (scatter[i * n + i] ?? 0) + sd * sd;
    away[i] = reading.value - usual;
  });
  const lower = choleskyOf(scatter, n);
  const place = new Map(values.map(({ key }, i) => [key, i]));
  return { values, place, precision: inverseCholesky(lower, n), away, pull: solveCholesky(lower, away) };
}
