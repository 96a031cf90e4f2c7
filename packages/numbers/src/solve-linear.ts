/**
 * Solves A X = B for a small dense A, by elimination with the largest pivot.
 *
 * @param a - n rows of n, n <= 50
 * @param b - n rows of m
 * @returns n rows of m
 * @throws RangeError when the sizes differ, a number is not finite, or A has no inverse
 * @source Golub & Van Loan, Matrix Computations, algorithm 3.4.1
 * @example solveLinear([[2, 0], [0, 4]], [[2], [2]]) // [[1], [0.5]]
 */
export function solveLinear(
  a: readonly (readonly number[])[],
  b: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const n = a.length;
  if (n === 0 || n > 50 || b.length !== n) throw new RangeError('The equations do not fit together.');
  const rows = a.map((row, i) => {
    if (row.length !== n) throw new RangeError('The matrix is not square.');
    return [...row, ...(b[i] ?? [])];
  });
  const width = rows[0]?.length ?? 0;
  const ok = rows.every((row) => row.length === width && row.every(Number.isFinite));
  if (!ok) throw new RangeError('The equations hold a number that is not finite, or rows of unequal length.');
  const scale = Math.max(...a.flat().map(Math.abs));
  const at = (i: number, j: number) => rows[i]?.[j] ?? 0;
  for (let k = 0; k < n; k += 1) {
    let best = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(at(i, k)) > Math.abs(at(best, k))) best = i;
    const pivotRow = rows[best] ?? [];
    rows[best] = rows[k] ?? [];
    rows[k] = pivotRow;
    const pivot = pivotRow[k] ?? 0;
    if (!(Math.abs(pivot) > 1e-14 * scale)) throw new RangeError('The equations have no single solution.');
    for (let i = 0; i < n; i += 1) {
      const row = rows[i] ?? [];
      const factor = (row[k] ?? 0) / pivot;
      if (i === k || factor === 0) continue;
      for (let j = k; j < width; j += 1) row[j] = (row[j] ?? 0) - factor * (pivotRow[j] ?? 0);
    }
  }
  return rows.map((row, i) => row.slice(n).map((value) => value / (row[i] ?? Number.NaN)));
}

/** The inverse of a small dense matrix. @throws RangeError when it has none */
export const inverse = (a: readonly (readonly number[])[]): readonly (readonly number[])[] =>
  solveLinear(
    a,
    a.map((_, i) => a.map((__, j) => (i === j ? 1 : 0))),
  );
