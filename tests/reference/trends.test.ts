import { kendallCritical, kendallTwoSided } from '@ballfirst/numbers/kendall';
import { mannKendall } from '@ballfirst/numbers/mann-kendall';
import { theilSen } from '@ballfirst/numbers/theil-sen';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { times, values } from './data/sen.ts';

describe('Theil-Sen', () => {
  // Source: Sen 1968, example; its ends are called 93 % there and hold 97.0 % exactly.
  it('slope 4 between 26/7 and 35/8', () => {
    const { slope, intercept, interval } = theilSen(times, values);
    expect(slope).toBe(4);
    expect(intercept).toBe(4);
    expect(interval?.low).toBeCloseTo(26 / 7, 12);
    expect(interval?.high).toBeCloseTo(35 / 8, 12);
    expect(1 - kendallTwoSided(7, 15)).toBeCloseTo(0.97, 3);
  });

  it('has no interval under five values, nor where the level cannot be reached', () => {
    expect(theilSen([1, 2, 3, 4], [1, 2, 3, 5]).interval).toBeNull();
    expect(theilSen([1, 2, 3, 4, 5], [1, 2, 3, 5, 4], 0.99).interval).toBeNull();
  });

  it('does not care about the order of the pairs, and moves with the values', () => {
    const value = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 5, maxLength: 15 }), value, (y, added) => {
        const t = y.map((_, i) => i);
        const plain = theilSen(t, y);
        const turned = theilSen(t.toReversed(), y.toReversed());
        expect(turned.slope).toBeCloseTo(plain.slope, 9);
        const steeper = theilSen(
          t,
          y.map((one, i) => one + added * i),
        );
        expect(steeper.slope).toBeCloseTo(plain.slope + added, 6);
      }),
      { seed: 33 },
    );
  });
});

describe('Mann-Kendall', () => {
  // Source: recomputed from Kendall 1975 on Sen's values, which all rise.
  it('all seven rise', () => {
    const trend = mannKendall(values);
    expect(trend.s).toBe(21);
    expect(trend.variance).toBeCloseTo(44.333, 3);
    expect(trend.z).toBeCloseTo(3.0038, 4);
    expect(trend.tau).toBe(1);
    expect(trend.p).toBeCloseTo(0.000397, 6);
    expect(trend.exact).toBe(true);
  });

  // Source: counting all orders; computed independently of this project.
  it('five values exclude nothing but S = 10, four nothing at all', () => {
    expect(kendallTwoSided(5, 10)).toBeCloseTo(0.0167, 4);
    expect(kendallCritical(5, 0.05)).toBe(10);
    expect(kendallTwoSided(4, 6)).toBeCloseTo(0.0833, 4);
    expect(kendallCritical(4, 0.05)).toBeNull();
  });

  it('refuses too few values and ones that are none', () => {
    expect(() => mannKendall([1, 2])).toThrow(RangeError);
    expect(() => mannKendall([1, 2, Number.NaN])).toThrow(/NaN/);
    expect(() => theilSen([1, 1, 1], [1, 2, 3])).toThrow(/same/);
  });
});
