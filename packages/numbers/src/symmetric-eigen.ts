export type Eigen = {
  /** Growing. */
  readonly values: readonly number[];
  /** One for each value, of length one. */
  readonly vectors: readonly (readonly number[])[];
};

/**
 * Eigenvalues and vectors of a small symmetric matrix by Jacobi rotations.
 *
 * @param matrix - n rows of n, n <= 50, symmetric
 * @throws RangeError when it is not square and symmetric or holds a number that is not finite
 * @source Golub & Van Loan, Matrix Computations, section 8.5
 * @example symmetricEigen([[2, 1], [1, 2]]).values // [1, 3]
 */
export function symmetricEigen(matrix: readonly (readonly number[])[]): Eigen {
  const n = matrix.length;
  const size = Math.max(...matrix.flat().map(Math.abs));
  if (n === 0 || n > 50 || !Number.isFinite(size))
    throw new RangeError('The matrix holds no finite numbers.');
  const a = matrix.map((row, i) => {
    const symmetric =
      row.length === n && row.every((x, j) => Math.abs(x - (matrix[j]?.[i] ?? 0)) <= 1e-9 * size);
    if (!symmetric) throw new RangeError('The matrix is not square and symmetric.');
    return [...row];
  });
  const v = a.map((_, i) => a.map((__, j) => (i === j ? 1 : 0)));
  const get = (m: number[][], i: number, j: number) => m[i]?.[j] ?? 0;
  const rotate = (m: number[][], i: number, p: number, q: number, c: number, s: number) => {
    const row = m[i] ?? [];
    const [x, y] = [row[p] ?? 0, row[q] ?? 0];
    row[p] = c * x - s * y;
    row[q] = s * x + c * y;
  };
  for (let sweep = 0; sweep < 60; sweep += 1) {
    let off = 0;
    for (let p = 0; p < n; p += 1) for (let q = 0; q < p; q += 1) off = Math.max(off, Math.abs(get(a, p, q)));
    if (off <= 1e-18 * size) break;
    for (let p = 0; p < n; p += 1) {
      for (let q = p + 1; q < n; q += 1) {
        if (get(a, p, q) === 0) continue;
        const theta = (get(a, q, q) - get(a, p, p)) / (2 * get(a, p, q));
        const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(theta, 1));
        const c = 1 / Math.hypot(t, 1);
        const s = t * c;
        for (let i = 0; i < n; i += 1) rotate(a, i, p, q, c, s);
        const [rowP, rowQ] = [[...(a[p] ?? [])], [...(a[q] ?? [])]];
        a[p] = rowP.map((x, j) => c * x - s * (rowQ[j] ?? 0));
        a[q] = rowQ.map((y, j) => s * (rowP[j] ?? 0) + c * y);
        for (let i = 0; i < n; i += 1) rotate(v, i, p, q, c, s);
      }
    }
  }
  const order = a.map((_, i) => i).sort((i, j) => get(a, i, i) - get(a, j, j));
  return {
    values: order.map((i) => get(a, i, i)),
    vectors: order.map((i) => v.map((row) => row[i] ?? 0)),
  };
}
