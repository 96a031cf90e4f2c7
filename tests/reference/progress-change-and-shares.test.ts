import { minimalDetectableChange } from '@ballfirst/progress/minimal-detectable-change';
import { shareOf } from '@ballfirst/progress/shares';
import { describe, expect, it } from 'vitest';

describe('minimal detectable change', () => {
  // Computed independently from MDC95 = q sqrt(s_w^2 (1/k1 + 1/k2) + 2 s_s^2); t with 8 degrees of freedom: 2.306 (tables).
  it('with a spread between set-ups', () => {
    const change = minimalDetectableChange({
      withinSd: 2,
      betweenSetUpsSd: 2,
      swingsBefore: 5,
      swingsAfter: 5,
    });
    expect(change).toBeCloseTo(6.07, 2);
  });
  it('within one set-up, the spread estimated from ten swings', () => {
    const ask = { withinSd: 2, betweenSetUpsSd: 0, swingsBefore: 5, swingsAfter: 5, quantile: 2.306 };
    expect(minimalDetectableChange(ask)).toBeCloseTo(2.92, 2);
  });
});

describe('shares of a tally', () => {
  // Newcombe 1998, Statistics in Medicine 17:857, table I, method 3.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%s of %s lies between %s and %s', (count, of, low, high) => {
    const share = shareOf(count, of);
    expect(share?.low).toBeCloseTo(low, 4);
    expect(share?.high).toBeCloseTo(high, 4);
  });
});
