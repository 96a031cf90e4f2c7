import { normalCdf } from '@ballfirst/numbers/normal-cdf';
import { normalQuantile } from '@ballfirst/numbers/normal-quantile';
import { errorFunction } from 'simple-statistics';
import { describe, expect, it } from 'vitest';

// Source: tables of the normal distribution, as in Abramowitz & Stegun table 26.1 and 26.5 (from memory, 10 places).
const table = [
  [0, 0.5],
  [1, 0.8413447461],
  [1.644853627, 0.95],
  [1.9599639845, 0.975],
  [2.5758293035, 0.995],
  [-3, 0.001349898],
] as const;

describe('normal distribution', () => {
  it.each(table)('P(Z <= %d)', (z, p) => {
    expect(normalCdf(z)).toBeCloseTo(p, 10);
    expect(normalQuantile(p)).toBeCloseTo(z, 7);
  });

  it('keeps its far tail', () => {
    // Source: Q(8) = 6.22096e-16, as in standard tables of the Q function (from memory).
    expect(normalCdf(-8) / 6.22096e-16).toBeCloseTo(1, 5);
  });

  it('agrees with a kept library to that library’s accuracy of 1.2e-7', () => {
    for (let z = -4; z <= 4; z += 0.25) {
      expect(Math.abs(normalCdf(z) - (1 + errorFunction(z / Math.SQRT2)) / 2)).toBeLessThan(1.2e-7);
    }
  });
});
