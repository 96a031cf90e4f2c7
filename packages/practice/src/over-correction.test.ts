import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { growthProbability, overCorrection } from './over-correction.ts';

const forward = { before: 10, after: 45, low: 30, high: 130 };
const question = { before: { count: 0, balls: 10 }, after: { count: 4, balls: 10 }, measurement: forward };

describe('over-correction', () => {
  it('is the opposite miss growing while the measurement moves into its band, or through it', () => {
    expect(overCorrection(question)).toBe('into');
    expect(overCorrection({ ...question, measurement: { ...forward, after: 150 } })).toBe('through');
  });
  it('is none while the measurement stays where it was, or was never out', () => {
    expect(overCorrection({ ...question, measurement: { ...forward, after: 20 } })).toBeNull();
    expect(overCorrection({ ...question, measurement: { ...forward, before: 60 } })).toBeNull();
  });
  it('is none where the miss has not grown by more than chance', () => {
    expect(
      overCorrection({ ...question, before: { count: 2, balls: 10 }, after: { count: 3, balls: 10 } }),
    ).toBeNull();
    expect(overCorrection({ ...question, after: { count: 0, balls: 10 } })).toBeNull();
  });
  it('refuses impossible counts', () => {
    expect(() => overCorrection({ ...question, after: { count: 11, balls: 10 } })).toThrow(RangeError);
    expect(() => overCorrection({ ...question, measurement: { ...forward, after: Number.NaN } })).toThrow(
      RangeError,
    );
  });
});

describe('growthProbability', () => {
  // Source: derived, the same counts before and after leave it even; the two directions add up to one.
  it('is even for the same counts, and one minus its opposite', () => {
    expect(growthProbability({ count: 3, balls: 10 }, { count: 3, balls: 10 })).toBeCloseTo(0.5, 6);
    const share = fc
      .integer({ min: 1, max: 40 })
      .chain((balls) => fc.record({ balls: fc.constant(balls), count: fc.nat({ max: balls }) }));
    fc.assert(
      fc.property(share, share, (one, other) => {
        const there = growthProbability(one, other);
        expect(there).toBeGreaterThanOrEqual(0);
        expect(there).toBeLessThanOrEqual(1);
        expect(there + growthProbability(other, one)).toBeCloseTo(1, 2);
      }),
      { numRuns: 30, seed: 81 },
    );
  });
});
