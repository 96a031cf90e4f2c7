import { arcHeightBehindMm } from '@ballfirst/library/arc-height';
import { ballDiameterMm, gripLengthMm } from '@ballfirst/library/constants';
import { describe, expect, it } from 'vitest';

/** Distance at which a clubhead first reaches a height, by halving; heights grow with the distance. */
const distanceFor = (heightMm: number, attackDeg: number): number => {
  let [near, far] = [0, 600];
  for (let step = 0; step < 60; step += 1) {
    const middle = (near + far) / 2;
    if (arcHeightBehindMm(middle, attackDeg) < heightMm) near = middle;
    else far = middle;
  }
  return near;
};

// Derived independently from the circle: radius 1300 mm, plane 62 deg.
describe('heights behind the ball', () => {
  it.each([
    [-4, 254, 40.5],
    [-4, 260, 42.0],
    [-4.5, 254, 42.8],
    [-4.5, 260, 44.4],
    [-4.5, 267, 46.3],
    [-5, 260, 46.8],
    [0, 260, 23.2],
    [1, 260, 18.6],
  ])('attack %s deg, %s mm behind: %s mm', (attack, behind, height) => {
    expect(arcHeightBehindMm(behind, attack)).toBeCloseTo(height, 1);
  });
  it('one grip length behind, about one ball high (common practice): 36 to 54 mm over radius and attack', () => {
    for (const radiusMm of [1100, 1300, 1500]) {
      for (const attack of [-3.5, -4.5, -5.5]) {
        const height = arcHeightBehindMm(gripLengthMm, attack, { radiusMm, planeDeg: 62 });
        expect(Math.round(height)).toBeGreaterThanOrEqual(36);
        expect(Math.round(height)).toBeLessThanOrEqual(54);
      }
    }
    expect(Math.abs(arcHeightBehindMm(gripLengthMm) - ballDiameterMm)).toBeLessThan(9);
  });
});

describe('where an obstacle has to lie', () => {
  it.each([
    [-4.5, 254],
    [-3.1, 281],
    [-2, 304],
  ])('a fence one ball high at attack %s deg: %s mm', (attack, distance) => {
    expect(Math.ceil(distanceFor(ballDiameterMm, attack))).toBe(distance);
  });
  it.each([
    [-4.5, 178],
    [-3.1, 202],
    [-2, 224],
  ])('a towel folded to 25 mm at attack %s deg: %s mm', (attack, distance) => {
    expect(Math.abs(distanceFor(25, attack) - distance)).toBeLessThan(1);
  });
  it('a sound 8-iron is 12.9 mm up at 11 cm behind the ball', () => {
    expect(arcHeightBehindMm(110)).toBeCloseTo(12.9, 1);
  });
});
