import {
  depthFromFatShare,
  fatChance,
  missesGroundChance,
  type SwingSet,
  thinChance,
  waysOut,
} from '@ballfirst/swing/arc/fat-risk';
import { depthFromBrush, lineTest } from '@ballfirst/swing/arc/line-test';
import { lowPointSpread } from '@ballfirst/swing/arc/low-point-spread';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const set: SwingSet = {
  lowPointAheadMm: { value: 65.5, u: 25 },
  depthMm: { value: 4.54, u: 2 },
  seenRadiusMm: 1472.34,
};

// Source: computed independently of this project (three places).
describe('fat risk of a set', () => {
  it.each([
    [0, 0.892],
    [10, 0.843],
    [30, 0.6927],
    [60, 0.376],
  ])('more than %d mm behind', (behind, chance) => {
    expect(fatChance(set, behind)).toBeCloseTo(chance, 3);
  });

  it('the ground is never met in .012, the ball is thin in .003', () => {
    expect(missesGroundChance(set)).toBeCloseTo(0.012, 3);
    expect(thinChance(set)).toBeCloseTo(0.003, 3);
  });

  it('to one in ten: 63 mm forward or 4.5 mm higher, and what that costs', () => {
    const { forward, higher } = waysOut(set);
    expect(forward.byMm).toBeCloseTo(63, 0);
    expect(forward.thin).toBeCloseTo(0.18, 2);
    expect(higher.byMm).toBeCloseTo(4.5, 1);
    expect(higher.thin).toBeCloseTo(0.15, 2);
    expect(higher.missesGround).toBeCloseTo(0.49, 2);
  });

  it('halving the scatter alone does not help; a sound set is fat in .059', () => {
    expect(fatChance({ ...set, lowPointAheadMm: { value: 65.5, u: 12.5 } })).toBeCloseTo(0.741, 3);
    const sound = { lowPointAheadMm: { value: 115.5, u: 15 }, depthMm: { value: 4.54, u: 1 } };
    expect(fatChance({ ...set, ...sound })).toBeCloseTo(0.059, 3);
  });

  // Derived: a low point 50 mm back costs 50 mm; at this arc a mm of depth costs 12.7 mm.
  it('moves one to one with the low point, and 12.7 mm a mm of depth', () => {
    const edge = (change: Partial<SwingSet>, behind: number) =>
      fatChance(
        { ...set, lowPointAheadMm: { value: 65.5, u: 0 }, depthMm: { value: 4.54, u: 0 }, ...change },
        behind,
      );
    expect(edge({}, 50)).toBe(1);
    expect(edge({}, 50.3)).toBe(0);
    expect(edge({ lowPointAheadMm: { value: 55.5, u: 0 } }, 60.1)).toBe(1);
    const start = (b: number) => Math.sqrt(2 * set.seenRadiusMm * b);
    expect((start(4.59) - start(4.49)) / 0.1).toBeCloseTo(12.7, 1);
  });

  it('an estimated scatter reads with heavier tails', () => {
    expect(fatChance({ ...set, degrees: 3 }, 60)).toBeLessThan(0.4);
    expect(fatChance({ ...set, degrees: 3 }, -200)).toBeLessThan(fatChance(set, -200));
    expect(fatChance({ ...set, degrees: 1e7 })).toBeCloseTo(fatChance(set), 6);
  });

  it('finds the depth that a counted share asks for', () => {
    const depth = depthFromFatShare(0.6, set.lowPointAheadMm, set.seenRadiusMm);
    expect(fatChance({ ...set, depthMm: depth })).toBeCloseTo(0.6, 6);
    expect(() => depthFromFatShare(1, set.lowPointAheadMm, set.seenRadiusMm)).toThrow(RangeError);
  });

  it('never grows as the low point moves forward', () => {
    const low = fc.double({ min: -50, max: 150, noNaN: true });
    const scatter = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(low, scatter, fc.double({ min: 0, max: 60, noNaN: true }), (value, u, forward) => {
        const before = fatChance({ ...set, lowPointAheadMm: { value, u } });
        const after = fatChance({ ...set, lowPointAheadMm: { value: value + forward, u } });
        expect(after).toBeLessThanOrEqual(before + 1e-12);
        expect(before).toBeGreaterThanOrEqual(0);
        expect(before).toBeLessThanOrEqual(1);
      }),
      { numRuns: 40, seed: 52 },
    );
  });

  it('refuses nonsense', () => {
    expect(() => fatChance({ ...set, seenRadiusMm: 0 })).toThrow(/radius/);
    expect(() => fatChance({ ...set, depthMm: { value: Number.NaN, u: 1 } })).toThrow(/depth/);
    expect(() => thinChance({ ...set, lowPointAheadMm: { value: 1, u: -1 } })).toThrow(/low point/);
    expect(() => waysOut(set, 0)).toThrow(/goal/);
  });
});

describe('what feeds it', () => {
  // Source: definition; mean -34, Student's t 2.776 with four degrees (printed tables).
  it('a line test of five brushes', () => {
    const test = lineTest([-40, -25, -60, -10, -35]);
    expect(test.meanStartMm).toBe(-34);
    expect(test.behind).toBe(5);
    expect(test.highMm - test.meanStartMm).toBeCloseTo((2.776 * test.sdMm) / Math.sqrt(5), 2);
    expect(() => lineTest([1, 2])).toThrow(/3 to 50/);
    expect(() => lineTest([1, 2, Number.NaN])).toThrow(/Brush 3/);
  });

  // Derived: an entry at the ball with the low point 115.5 mm ahead is 4.54 mm deep (short formula 4.53).
  it('the depth behind a brush', () => {
    expect(depthFromBrush(0, { value: 115.5, u: 10 }, 1472.34).value).toBeCloseTo(4.53, 2);
    expect(() => depthFromBrush(120, { value: 100, u: 10 }, 1472)).toThrow(RangeError);
  });

  // Source: s^2 less the mean square of the doubts, by hand.
  it('the spread of low points without what the marks add', () => {
    const spread = lowPointSpread([
      { value: 100, u: 10 },
      { value: 60, u: 10 },
      { value: 80, u: 10 },
    ]);
    expect(spread.spreadMm).toBeCloseTo(Math.sqrt(400 - 100), 10);
    expect(spread.predictiveMm).toBeCloseTo(Math.sqrt(300 + 400 / 3), 10);
    expect(
      lowPointSpread([
        { value: 1, u: 30 },
        { value: 5, u: 30 },
      ]).spreadMm,
    ).toBe(0);
  });
});
