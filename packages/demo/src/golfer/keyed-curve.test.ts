import { describe, expect, it } from 'vitest';
import { keyedCurve } from './keyed-curve.ts';

describe('keyedCurve', () => {
  const curve = keyedCurve([
    [0, 1],
    [1, 4],
    [2, 4],
    [4, -2],
  ]);

  it('passes through its keys and rests outside them', () => {
    for (const [t, value] of [
      [-1, 1],
      [0, 1],
      [1, 4],
      [2, 4],
      [4, -2],
      [9, -2],
    ] as const) {
      expect(curve(t)).toBeCloseTo(value, 12);
    }
  });

  it('never overshoots between two keys', () => {
    for (let t = 0; t <= 4; t += 0.01) {
      expect(curve(t)).toBeLessThanOrEqual(4 + 1e-12);
      expect(curve(t)).toBeGreaterThanOrEqual(-2 - 1e-12);
    }
    expect(curve(1.5)).toBeCloseTo(4, 12);
  });

  it('refuses times that do not rise', () => {
    expect(() => keyedCurve([[0, 1]])).toThrow(RangeError);
    expect(() =>
      keyedCurve([
        [0, 1],
        [0, 2],
      ]),
    ).toThrow(RangeError);
  });
});

describe('a curve with given slopes at its ends', () => {
  it('leaves and arrives with them', () => {
    const curve = keyedCurve(
      [
        [0, 0],
        [1, 1],
        [2, 3],
      ],
      { first: 0.5, last: 2 },
    );
    expect(curve(1e-6) / 1e-6).toBeCloseTo(0.5, 4);
    expect((3 - curve(2 - 1e-6)) / 1e-6).toBeCloseTo(2, 4);
  });
});
