import { inverse, solveLinear } from './solve-linear.ts';

export type Fitted = {
  readonly parameters: readonly number[];
  readonly sumOfSquares: number;
  /** (J'J)^-1 at the end: the covariance where each residual has unit variance. */
  readonly covariance: readonly (readonly number[])[];
  readonly steps: number;
};

export type LeastSquares = {
  /** Parameters to residuals, each over its own standard deviation. */
  readonly residuals: (parameters: readonly number[]) => readonly number[];
  readonly start: readonly number[];
  /** Half-width of the difference by parameter, in its unit, each > 0. */
  readonly steps: readonly number[];
};

const mostSteps = 200;

/**
 * Parameters with the least sum of squared residuals, by Levenberg-Marquardt with differences.
 *
 * @throws RangeError when a residual is not finite at the start, the sizes differ, the parameters cannot be told apart,
 * or the search does not settle
 * @source Marquardt 1963, SIAM Journal 11:431; Nielsen 1999 (how the damping moves)
 * @example leastSquares({ residuals: ([a = 0]) => [a - 2, a - 4], start: [0], steps: [1e-3] }).parameters // [3]
 */
export function leastSquares({ residuals, start, steps }: LeastSquares): Fitted {
  const k = start.length;
  if (k === 0 || steps.length !== k || !steps.every((step) => step > 0)) {
    throw new RangeError('Each parameter needs a start and a positive step.');
  }
  const sumOf = (values: readonly number[]) => values.reduce((sum, r) => sum + r * r, 0);
  const slopes = (at: readonly number[]) =>
    at.map((_, j) => {
      const moved = (by: number) => residuals(at.map((x, i) => (i === j ? x + by * (steps[j] ?? 0) : x)));
      const [above, below] = [moved(1), moved(-1)];
      return above.map((r, i) => (r - (below[i] ?? 0)) / (2 * (steps[j] ?? 1)));
    });
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0);
  let parameters = [...start];
  let now = residuals(parameters);
  let sum = sumOf(now);
  if (!Number.isFinite(sum)) throw new RangeError('A residual is not finite at the start.');
  let damping = 1e-3;
  let growth = 2;
  for (let step = 0; step < mostSteps; step += 1) {
    const columns = slopes(parameters);
    const normal = columns.map((a) => columns.map((b) => dot(a, b)));
    const gradient = columns.map((column) => dot(column, now));
    const damped = normal.map((row, i) => row.map((x, j) => (i === j ? x * (1 + damping) + 1e-300 : x)));
    const move = solveLinear(
      damped,
      gradient.map((g) => [-g]),
    ).map(([x = 0]) => x);
    const tried = parameters.map((x, i) => x + (move[i] ?? 0));
    const then = residuals(tried);
    const sumThen = sumOf(then);
    const expected =
      -dot(move, gradient) * 2 -
      dot(
        move,
        normal.map((row) => dot(row, move)),
      );
    const settled = move.every(
      (x, i) => Math.abs(x) <= 1e-9 * (steps[i] ?? 0) + 1e-12 * Math.abs(tried[i] ?? 0),
    );
    if (sumThen <= sum || settled || expected <= 1e-14 * (sum + 1e-12)) {
      const better = sumThen <= sum;
      const done = settled || sum - sumThen <= 1e-13 * (sum + 1e-12) || !better;
      if (better) [parameters, now, sum] = [tried, then, sumThen];
      damping = Math.max(1e-12, damping / 5);
      growth = 2;
      if (done) return { parameters, sumOfSquares: sum, covariance: inverse(normal), steps: step + 1 };
    } else {
      damping *= growth;
      growth *= 2;
      if (!Number.isFinite(damping)) break;
    }
  }
  throw new RangeError('The fit did not settle.');
}
