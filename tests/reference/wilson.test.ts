import { wilsonInterval } from '@ballfirst/numbers/wilson-interval';
import { describe, expect, it } from 'vitest';

// Source: Newcombe 1998, Statistics in Medicine 17:857, table I, method 3 (four places).
const published = [
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
  [29, 29, 0.883, 1],
] as const;

// Derived: the same formula at the goals of a drill.
const derived = [
  [8, 10, 0.4902, 0.9433],
  [9, 10, 0.5958, 0.9821],
  [10, 10, 0.7225, 1],
  [5, 10, 0.2366, 0.7634],
] as const;

describe('Wilson interval', () => {
  it.each([...published, ...derived])('%i of %i', (successes, n, low, high) => {
    const interval = wilsonInterval(successes, n);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });

  it('refuses what is no share', () => {
    for (const [successes, n] of [
      [-1, 5],
      [6, 5],
      [1, 0],
      [1.5, 5],
    ] as const) {
      expect(() => wilsonInterval(successes, n)).toThrow(RangeError);
    }
  });
});
