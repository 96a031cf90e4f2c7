import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from './propagate.ts';
import { varianceOf } from './variance-of.ts';

describe('propagate', () => {
  it('is exact for a linear model, correlation included', () => {
    const number = fc.double({ min: -100, max: 100, noNaN: true });
    const u = fc.double({ min: 0.01, max: 10, noNaN: true });
    const r = fc.double({ min: -0.99, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(number, number, u, u, r, (a, b, ua, ub, rho) => {
        const covariance = [
          [ua * ua, rho * ua * ub],
          [rho * ua * ub, ub * ub],
        ];
        const result = propagate(([x = 0, y = 0]) => 2 * x - y, [a, b], covariance);
        const exact = Math.sqrt(4 * ua * ua + ub * ub - 4 * rho * ua * ub);
        expect(result.value).toBe(2 * a - b);
        expect(result.u).toBeCloseTo(exact, 6);
      }),
      { seed: 61 },
    );
  });

  it('takes an input without doubt as exact', () => {
    expect(
      propagate(
        ([x = 0, y = 0]) => x * y,
        [3, 4],
        [
          [0, 0],
          [0, 1],
        ],
      ).u,
    ).toBeCloseTo(3, 9);
  });

  it('refuses nonsense instead of giving a number', () => {
    const sum = ([x = 0, y = 0]: readonly number[]) => x + y;
    expect(() => propagate(sum, [1, 2], [[1]])).toThrow(RangeError);
    expect(() =>
      propagate(
        sum,
        [1, 2],
        [
          [1, 0.5],
          [0, 1],
        ],
      ),
    ).toThrow(RangeError);
    expect(() =>
      propagate(
        sum,
        [1, Number.NaN],
        [
          [1, 0],
          [0, 1],
        ],
      ),
    ).toThrow(RangeError);
    expect(() => propagate(([x = 0]) => 1 / x, [0], [[1]])).toThrow(RangeError);
    expect(() => varianceOf([1], [[-1]])).toThrow(RangeError);
  });
});
