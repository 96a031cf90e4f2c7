import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choleskyOf, inverseCholesky, solveCholesky } from './cholesky.ts';
import { inverse, solveLinear } from './solve-linear.ts';

const entry = fc.double({ min: -3, max: 3, noNaN: true });

describe('Cholesky', () => {
  it('is its own definition, by hand', () => {
    expect([...choleskyOf(Float64Array.of(4, 2, 2, 5), 2)]).toEqual([2, 0, 1, 2]);
    expect([...solveCholesky(Float64Array.of(2, 0, 1, 2), Float64Array.of(8, 10))]).toEqual([1.25, 1.5]);
  });

  it('solves as elimination does', () => {
    const sized = fc
      .integer({ min: 1, max: 12 })
      .chain((n) =>
        fc.tuple(
          fc.array(entry, { minLength: n * n, maxLength: n * n }),
          fc.array(entry, { minLength: n, maxLength: n }),
        ),
      );
    fc.assert(
      fc.property(sized, ([f, b]) => {
        const n = b.length;
        const rows = b.map((_, i) =>
          b.map((__, j) =>
            b.reduce((sum, ___, k) => sum + (f[i * n + k] ?? 0) * (f[j * n + k] ?? 0), i === j ? 1 : 0),
          ),
        );
        const lower = choleskyOf(Float64Array.from(rows.flat()), n);
        const x = solveCholesky(lower, Float64Array.from(b));
        const other = solveLinear(
          rows,
          b.map((value) => [value]),
        );
        for (const [i, value] of x.entries()) expect(value).toBeCloseTo(other[i]?.[0] ?? Number.NaN, 6);
        const eliminated = inverse(rows).flat();
        for (const [i, value] of inverseCholesky(lower, n).entries())
          expect(value).toBeCloseTo(eliminated[i] ?? Number.NaN, 6);
      }),
      { numRuns: 50, seed: 71 },
    );
  });

  it('refuses what is no covariance', () => {
    expect(() => choleskyOf(Float64Array.of(1, 2, 2, 1), 2)).toThrow(/positive definite/);
    expect(() => choleskyOf(Float64Array.of(Number.NaN), 1)).toThrow(/positive definite/);
    expect(() => choleskyOf(Float64Array.of(1, 2, 3), 2)).toThrow(/square/);
    expect(() => inverseCholesky(Float64Array.of(1), 2)).toThrow(/square/);
    expect(() => solveCholesky(Float64Array.of(1), Float64Array.of(1, 2))).toThrow(/fit/);
  });
});
