/**
 * The lower triangle L of a symmetric, positive definite matrix, L L' = A.
 *
 * @param a - n rows of n, one after the other; only the lower triangle is read
 * @returns n rows of n; nothing stands over the diagonal
 * @throws RangeError when the matrix is not positive definite, or holds a number that is not finite
 * @source Golub & Van Loan, Matrix Computations, algorithm 4.2.1
 * @example choleskyOf(Float64Array.of(4, 0, 2, 5), 2) // 2, 0, 1, 2
 */
export function choleskyOf(a: Float64Array, n: number): Float64Array {
  if (a.length !== n * n) throw new RangeError('The matrix is not square.');
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = a[i * n + j] ?? Number.NaN;
      for (let k = 0; k < j; k += 1) sum -= (l[i * n + k] ?? 0) * (l[j * n + k] ?? 0);
      if (i !== j) l[i * n + j] = sum / (l[j * n + j] ?? 1);
      else if (sum > 0 && sum < Number.POSITIVE_INFINITY) l[i * n + i] = Math.sqrt(sum);
      else throw new RangeError('The matrix is not positive definite.');
    }
  }
  return l;
}

/**
 * Solves L L' x = b.
 *
 * @param l - the lower triangle as `choleskyOf` gives it
 * @param b - n numbers
 * @source Golub & Van Loan, Matrix Computations, algorithms 3.1.1 and 3.1.2
 * @example solveCholesky(Float64Array.of(2, 0, 1, 2), Float64Array.of(8, 10)) // 1.25, 1.5
 */
export function solveCholesky(l: Float64Array, b: Float64Array): Float64Array {
  const n = b.length;
  if (l.length !== n * n) throw new RangeError('The equations do not fit together.');
  const x = b.slice();
  for (let i = 0; i < n; i += 1) {
    let sum = x[i] ?? 0;
    for (let k = 0; k < i; k += 1) sum -= (l[i * n + k] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (l[i * n + i] ?? 1);
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = x[i] ?? 0;
    for (let k = i + 1; k < n; k += 1) sum -= (l[k * n + i] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (l[i * n + i] ?? 1);
  }
  return x;
}

/**
 * The inverse of L L'.
 *
 * @param l - the lower triangle as `choleskyOf` gives it, n rows of n
 * @source as `solveCholesky`, one unit vector after the other
 * @example inverseCholesky(Float64Array.of(2), 1) // 0.25
 */
export function inverseCholesky(l: Float64Array, n: number): Float64Array {
  if (l.length !== n * n) throw new RangeError('The matrix is not square.');
  const inverse = new Float64Array(n * n);
  const x = new Float64Array(n);
  // A unit vector is nothing above its one, and the inverse is symmetric: each column is solved from there down.
  for (let column = 0; column < n; column += 1) {
    for (let i = column; i < n; i += 1) {
      let sum = i === column ? 1 : 0;
      for (let k = column; k < i; k += 1) sum -= (l[i * n + k] ?? 0) * (x[k] ?? 0);
      x[i] = sum / (l[i * n + i] ?? 1);
    }
    for (let i = n - 1; i >= column; i -= 1) {
      let sum = x[i] ?? 0;
      for (let k = i + 1; k < n; k += 1) sum -= (l[k * n + i] ?? 0) * (x[k] ?? 0);
      const value = sum / (l[i * n + i] ?? 1);
      x[i] = value;
      inverse[i * n + column] = value;
      inverse[column * n + i] = value;
    }
  }
  return inverse;
}
