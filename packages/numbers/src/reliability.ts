import { checkFinite } from './check-finite.ts';

export type Reliability = {
  readonly meanSquare: {
    readonly rows: number;
    readonly within: number;
    readonly columns: number;
    readonly error: number;
  };
  /** One rating, raters drawn anew for each target; drawn once; the only ones of interest. */
  readonly icc11: number;
  readonly icc21: number;
  readonly icc31: number;
  /** The mean of all ratings, in the same three cases. */
  readonly icc1k: number;
  readonly icc2k: number;
  readonly icc3k: number;
  /** Standard error of measurement: how far one rating lies from another of the same target. */
  readonly semConsistency: number;
  readonly semAgreement: number;
};

/**
 * Intraclass correlations and standard errors of measurement from targets (rows) that were all rated alike (columns).
 *
 * @param ratings - at least two rows of at least two finite values each
 * @throws RangeError when rows differ in length, a value is not finite, or all are the same
 * @source Shrout & Fleiss 1979, Psychological Bulletin 86:420
 * @example reliability([[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8]]).icc31
 */
export function reliability(ratings: readonly (readonly number[])[]): Reliability {
  const n = ratings.length;
  const k = ratings[0]?.length ?? 0;
  if (n < 2 || k < 2) throw new RangeError('Reliability needs two targets and two ratings of each.');
  for (const [i, row] of ratings.entries()) {
    checkFinite(`ratings of target ${i + 1}`, row);
    if (row.length !== k) throw new RangeError(`Target ${i + 1} has ${row.length} ratings, not ${k}.`);
  }
  const mean = (values: readonly number[]) => values.reduce((sum, x) => sum + x, 0) / values.length;
  const grand = mean(ratings.flat());
  const square = (values: readonly number[]) => values.reduce((sum, x) => sum + (x - grand) ** 2, 0);
  const ssRows = k * square(ratings.map(mean));
  const ssColumns = n * square(Array.from({ length: k }, (_, j) => mean(ratings.map((row) => row[j] ?? 0))));
  const ssTotal = square(ratings.flat());
  if (!(ssTotal > 0)) throw new RangeError('All ratings are the same.');
  const rows = ssRows / (n - 1);
  const within = (ssTotal - ssRows) / (n * (k - 1));
  const columns = ssColumns / (k - 1);
  const error = Math.max(0, ssTotal - ssRows - ssColumns) / ((n - 1) * (k - 1));
  return {
    meanSquare: { rows, within, columns, error },
    icc11: (rows - within) / (rows + (k - 1) * within),
    icc21: (rows - error) / (rows + (k - 1) * error + (k * (columns - error)) / n),
    icc31: (rows - error) / (rows + (k - 1) * error),
    icc1k: (rows - within) / rows,
    icc2k: (rows - error) / (rows + (columns - error) / n),
    icc3k: (rows - error) / rows,
    semConsistency: Math.sqrt(error),
    semAgreement: Math.sqrt(within),
  };
}

/**
 * Smallest change between two single values that chance would seldom bring: 1.96 sqrt(2) SEM.
 *
 * @throws RangeError when the standard error is not finite and >= 0
 * @source Weir 2005, Journal of Strength and Conditioning Research 19:231
 * @example minimalChange(1.00968) // 2.79868
 */
export function minimalChange(sem: number): number {
  if (!(sem >= 0 && Number.isFinite(sem))) throw new RangeError('A standard error is 0 or more.');
  return 1.959963984540054 * Math.SQRT2 * sem;
}
