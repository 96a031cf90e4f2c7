import { leastSquares } from '@ballfirst/numbers/least-squares';
import { linearRegression } from '@ballfirst/numbers/linear-regression';
import { inverse, solveLinear } from '@ballfirst/numbers/solve-linear';
import { symmetricEigen } from '@ballfirst/numbers/symmetric-eigen';
import fc from 'fast-check';
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { EigenvalueDecomposition, Matrix, solve } from 'ml-matrix';
import { linearRegression as simpleRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';

// Source: three open libraries that are kept by others, on random input.
const number = fc.double({ min: -10, max: 10, noNaN: true });
const square = fc
  .integer({ min: 2, max: 6 })
  .chain((n) => fc.array(fc.array(number, { minLength: n, maxLength: n }), { minLength: n, maxLength: n }));

describe('against kept libraries', () => {
  it('solves equations as ml-matrix does', () => {
    fc.assert(
      fc.property(square, (rows) => {
        // A heavy diagonal keeps the equations far from having no solution.
        const a = rows.map((row, i) => row.map((x, j) => (i === j ? x + 60 : x)));
        const b = a.map((_, i) => [i + 1]);
        const theirs = solve(new Matrix(a), new Matrix(b)).to2DArray();
        solveLinear(a, b).forEach((row, i) => {
          expect(row[0]).toBeCloseTo(theirs[i]?.[0] ?? Number.NaN, 9);
        });
        const once = new Matrix(a).mmul(new Matrix(inverse(a).map((row) => [...row])));
        expect(once.sub(Matrix.eye(a.length)).norm()).toBeLessThan(1e-9);
      }),
      { numRuns: 60, seed: 41 },
    );
  });

  it('finds eigenvalues as ml-matrix does', () => {
    fc.assert(
      fc.property(square, (rows) => {
        const a = rows.map((row, i) => row.map((x, j) => x + (rows[j]?.[i] ?? 0)));
        const theirs = new EigenvalueDecomposition(new Matrix(a)).realEigenvalues.toSorted((x, y) => x - y);
        const { values, vectors } = symmetricEigen(a);
        values.forEach((value, k) => {
          expect(value).toBeCloseTo(theirs[k] ?? Number.NaN, 8);
          const v = vectors[k] ?? [];
          a.forEach((row, i) => {
            expect(row.reduce((sum, x, j) => sum + x * (v[j] ?? 0), 0)).toBeCloseTo(value * (v[i] ?? 0), 7);
          });
        });
      }),
      { numRuns: 60, seed: 42 },
    );
  });

  it('fits a curve as ml-levenberg-marquardt does', () => {
    const x = Array.from({ length: 12 }, (_, i) => i / 3);
    const share = fc.double({ min: 0.3, max: 3, noNaN: true });
    fc.assert(
      fc.property(share, share, fc.array(number, { minLength: 12, maxLength: 12 }), (a, b, noise) => {
        const y = x.map((at, i) => a * Math.exp(-b * at) + (noise[i] ?? 0) / 200);
        const curve =
          ([p = 0, q = 0]: readonly number[]) =>
          (at: number) =>
            p * Math.exp(-q * at);
        const theirs = levenbergMarquardt({ x, y }, curve, {
          initialValues: [a * 1.1, b * 0.9],
          centralDifference: true,
          gradientDifference: 1e-6,
          maxIterations: 500,
          errorTolerance: 0,
        });
        const ours = leastSquares({
          residuals: (p) => x.map((at, i) => curve(p)(at) - (y[i] ?? 0)),
          start: [a * 1.1, b * 0.9],
          steps: [1e-6, 1e-6],
        });
        expect(ours.sumOfSquares).toBeLessThanOrEqual(theirs.parameterError * (1 + 1e-6) + 1e-12);
        ours.parameters.forEach((value, i) => {
          expect(Math.abs(value - (theirs.parameterValues[i] ?? 0))).toBeLessThan(2e-3);
        });
      }),
      { numRuns: 30, seed: 43 },
    );
  });

  it('lays a line as simple-statistics does', () => {
    const pairs = fc.array(fc.tuple(number, number), { minLength: 3, maxLength: 40 });
    fc.assert(
      fc.property(pairs, (points) => {
        const x = points.map(([at], i) => at + i);
        const y = points.map(([, value]) => value);
        const theirs = simpleRegression(x.map((at, i) => [at, y[i] ?? 0]));
        const ours = linearRegression(x, y);
        fc.pre(new Set(x).size > 2);
        expect(ours.slope).toBeCloseTo(theirs.m, 6);
        expect(ours.intercept).toBeCloseTo(theirs.b, 5);
      }),
      { numRuns: 60, seed: 44 },
    );
  });
});
