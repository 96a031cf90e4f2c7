import { ewma, ewmaOfShares } from '@ballfirst/numbers/ewma';
import { laneyFactor } from '@ballfirst/numbers/laney-factor';
import { describe, expect, it } from 'vitest';
import { smoothed, values } from './data/smoothed-averages.ts';

describe('exponentially weighted moving average', () => {
  const points = ewma(values, 0.3, 50, 2.0539);
  const upper = (i: number) => 50 + 3 * (points[i]?.sd ?? 0);

  // Source: NIST/SEMATECH e-Handbook 6.3.2.4. It prints two places, each step from the rounded one before: 0.006.
  it.each(smoothed.map((value, i) => [i + 1, value] as const))('point %d is %d', (n, value) => {
    expect(Math.abs((points[n - 1]?.value ?? 0) - value)).toBeLessThan(0.0065);
  });

  it('no point leaves its limits, which settle at 52.5884 and 47.4115', () => {
    // The handbook rounds sqrt(.3 / 1.7) to .4201; unrounded 52.58843 and 47.41157.
    const limit = 3 * 2.0539 * Math.sqrt(0.3 / 1.7);
    expect(Math.abs(50 + limit - 52.5884)).toBeLessThan(2e-4);
    expect(Math.abs(50 - limit - 47.4115)).toBeLessThan(2e-4);
    for (const { value, sd } of points) expect(Math.abs(value - 50)).toBeLessThan(3 * sd);
    // Limits that grow with time: derived.
    expect([0, 1, 2].map((i) => Number(upper(i).toFixed(4)))).toEqual([51.8485, 52.2564, 52.4314]);
  });
});

describe('moving average of shares with varying counts', () => {
  const days = [
    { successes: 6, n: 10 },
    { successes: 15, n: 20 },
    { successes: 7, n: 10 },
    { successes: 30, n: 40 },
  ];
  // Source: computed independently of this project from the recursion.
  it('carries each count along', () => {
    const points = ewmaOfShares(days, 0.3, 0.5);
    const expected = [
      [0.53, 0.04743],
      [0.596, 0.0472],
      [0.6272, 0.05781],
      [0.66404, 0.0469],
    ];
    expected.forEach(([value = 0, sd = 0], i) => {
      expect(points[i]?.value).toBeCloseTo(value, 10);
      expect(points[i]?.sd).toBeCloseTo(sd, 5);
    });
  });

  // Source: Laney 2002; two days by hand: 0.6 apart, sd sqrt(.25 / 10), over 1.128.
  it('widens for days that differ by more than their counts', () => {
    const apart = [
      { successes: 2, n: 10 },
      { successes: 8, n: 10 },
    ];
    expect(laneyFactor(apart)).toBeCloseTo(0.6 / Math.sqrt(0.025) / 1.128, 10);
    expect(laneyFactor([days[0] ?? apart[0], days[0] ?? apart[0]].flatMap((day) => (day ? [day] : [])))).toBe(
      1,
    );
    const wide = ewmaOfShares(days, 0.3, 0.5, 2).map(({ sd }) => sd);
    expect(wide).toEqual(ewmaOfShares(days, 0.3, 0.5).map(({ sd }) => 2 * sd));
    expect(() => ewmaOfShares([{ successes: 11, n: 10 }], 0.3, 0.5)).toThrow(/Day 1/);
  });
});
