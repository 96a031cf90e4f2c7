import {
  attackDegOf,
  groundHalfChordMm,
  heightBehindMm,
  lowPointAheadMm,
  pathLessDirectionDeg,
  seenRadiusMm,
} from '@ballfirst/swing/arc/arc-geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

// Source: the geometry of a circle in a tilted plane; values derived independently of this project.
const iron = { radiusMm: 1300, planeDeg: 62 } as const;

describe('arc geometry', () => {
  it.each([
    [-4, 102.7],
    [-4.5, 115.5],
    [-5, 128.3],
    [2, -51.4],
  ])('attack %d deg: low point %d mm ahead', (attack, ahead) => {
    expect(lowPointAheadMm(attack, iron)).toBeCloseTo(ahead, 1);
  });

  it.each([
    [115.5, -4.5],
    [85.5, -3.33],
    [65.5, -2.55],
    [35.5, -1.38],
    [0, 0],
    [-30, 1.17],
    [-50, 1.95],
  ])('low point %d mm ahead: attack %d deg', (ahead, attack) => {
    expect(attackDegOf(ahead, iron)).toBeCloseTo(attack, 2);
  });

  it.each([
    [-4.5, 62, 2.398],
    [-4.5, 60, 2.604],
    [-5, 64, 2.446],
    [-1.3, 47, 1.213],
    [3, 47, -2.801],
    [-4, 45, 4.01],
  ])('attack %d, plane %d deg: path %d deg aside', (attack, plane, aside) => {
    expect(pathLessDirectionDeg(attack, plane)).toBeCloseTo(aside, 3);
  });

  it.each([
    [4.54, 115.51],
    [5, 121.21],
    [10, 171.23],
    [15, 209.48],
  ])('ground chord at a depth of %d mm: %d mm each way', (depth, half) => {
    expect(groundHalfChordMm(depth, iron)).toBeCloseTo(half, 2);
  });

  it.each([
    [1100, 62, -4.5, 49.0],
    [1500, 62, -4.5, 41.1],
    [1700, 62, -4.5, 38.6],
    [1300, 55, -4.5, 42.8],
    [1300, 66, -4.5, 45.2],
    [1300, 62, -2, 32.5],
    [1300, 62, -6, 51.7],
    [1300, 62, 2, 14.0],
  ])('R %d, plane %d, attack %d: %d mm up one grip length behind', (radiusMm, planeDeg, attack, height) => {
    const arc = { radiusMm, planeDeg };
    expect(heightBehindMm(260, lowPointAheadMm(attack, arc), arc)).toBeCloseTo(height, 1);
  });

  // Source: common practice says one ball high (42.67 mm, Equipment Rules) one grip length behind; geometry within 9 mm.
  it('a sound 8-iron is one ball high one grip length behind', () => {
    for (const radiusMm of [1100, 1300, 1500]) {
      for (const attack of [-3.5, -4.5, -5.5]) {
        const arc = { radiusMm, planeDeg: 62 };
        const height = heightBehindMm(260, lowPointAheadMm(attack, arc), arc);
        expect(height).toBeGreaterThan(35.5);
        expect(height).toBeLessThan(54.5);
      }
    }
    expect(Math.abs(heightBehindMm(260, 115.5, iron) - 42.67)).toBeLessThan(9);
  });

  // Derived: a grip butt of 27 mm is cleared at 260 mm from -0.82 deg down; a degree there is worth 4.81 mm at -4.5.
  it('clears a grip butt from -0.82 deg down', () => {
    const height = (attack: number) => heightBehindMm(260, lowPointAheadMm(attack, iron), iron);
    expect(height(-0.82)).toBeCloseTo(27, 1);
    expect((height(-4.55) - height(-4.45)) / 0.1).toBeCloseTo(4.81, 2);
  });

  it('1 cm of low point is worth 0.389 deg, a degree of tilt 25.7 mm', () => {
    expect(attackDegOf(5, iron) - attackDegOf(-5, iron)).toBeCloseTo(-0.389, 3);
    expect((seenRadiusMm(iron) * Math.PI) / 180).toBeCloseTo(25.7, 1);
  });

  it('goes there and back, and grows with the attack', () => {
    const attack = fc.double({ min: -15, max: 15, noNaN: true });
    const radius = fc.double({ min: 900, max: 1900, noNaN: true });
    const plane = fc.double({ min: 40, max: 70, noNaN: true });
    fc.assert(
      fc.property(attack, radius, plane, (deg, radiusMm, planeDeg) => {
        const arc = { radiusMm, planeDeg };
        expect(attackDegOf(lowPointAheadMm(deg, arc), arc)).toBeCloseTo(deg, 8);
        expect(lowPointAheadMm(deg - 1, arc)).toBeGreaterThan(lowPointAheadMm(deg, arc));
      }),
      { seed: 51 },
    );
  });

  it('refuses what no circle reaches', () => {
    expect(() => lowPointAheadMm(-70, { radiusMm: 1300, planeDeg: 62 })).toThrow(/does not reach/);
    expect(() => attackDegOf(1300, iron)).toThrow(RangeError);
    expect(() => heightBehindMm(260, 115, { radiusMm: 0, planeDeg: 62 })).toThrow(/radius/);
    expect(() => groundHalfChordMm(-1, iron)).toThrow(/depth/);
    expect(() => pathLessDirectionDeg(-4, 90)).toThrow(/plane/);
    expect(() => lowPointAheadMm(Number.NaN, iron)).toThrow(RangeError);
  });
});
