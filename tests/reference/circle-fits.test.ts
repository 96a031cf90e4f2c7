import { circleAlgebraic } from '@ballfirst/numbers/circle-algebraic';
import { circleGeometric } from '@ballfirst/numbers/circle-geometric';
import { circleLinear } from '@ballfirst/numbers/circle-linear';
import { circleTaubin } from '@ballfirst/numbers/circle-taubin';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circlePoints } from './data/circle-points.ts';

describe('circle fits', () => {
  // Source: Gander, Golub & Strebel 1994, BIT 34:558 (algebraic, geometric); Taubin and linear recomputed apart.
  it.each([
    ['algebraic', circleAlgebraic, 5.3794, 7.2532, 3.037],
    ['geometric', circleGeometric, 4.7398, 2.9835, 4.7142],
    ['linear', circleLinear, 4.7423, 3.8351, 4.1088],
    ['Taubin', circleTaubin, 4.6139, 2.7952, 4.8792],
  ] as const)('%s', (_, fit, x, y, r) => {
    const circle = fit(circlePoints);
    expect(circle.x).toBeCloseTo(x, 4);
    expect(circle.y).toBeCloseTo(y, 4);
    expect(circle.r).toBeCloseTo(r, 4);
  });

  it('leave the published sum of squares', () => {
    expect(circleGeometric(circlePoints).sumOfSquares).toBeCloseTo(1.2276, 4);
  });

  // Source: a tutorial's second set of points (OSGeoLab); result recomputed.
  it('linear, another set', () => {
    const circle = circleLinear([
      [11.88, 0.08],
      [10.34, 8.59],
      [2.58, 9.54],
      [-0.29, 1.95],
    ]);
    expect([circle.x, circle.y, circle.r].map((value) => Number(value.toFixed(4)))).toEqual([
      6.0814, 3.6346, 6.6992,
    ]);
  });

  // Source: the definition of a circle.
  it('find a circle that the points lie on', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        between(-100, 100),
        between(-100, 100),
        between(0.1, 50),
        between(0.3, 6),
        (x, y, r, span) => {
          const points = [0, 0.2, 0.45, 0.7, 1].map(
            (share) => [x + r * Math.cos(span * share), y + r * Math.sin(span * share)] as const,
          );
          for (const fit of [circleGeometric, circleLinear, circleTaubin]) {
            expect(Math.abs(fit(points).r / r - 1)).toBeLessThan(1e-6);
          }
        },
      ),
      { numRuns: 60, seed: 31 },
    );
  });

  it.each([
    [
      'on one line',
      [
        [0, 0],
        [1, 1],
        [2, 2],
        [5, 5],
      ],
      /one line/,
    ],
    [
      'coincident',
      [
        [1, 1],
        [1, 1],
        [1, 1],
      ],
      /coincide/,
    ],
    [
      'too few',
      [
        [0, 0],
        [1, 0],
      ],
      /at least 6/,
    ],
    [
      'not a number',
      [
        [0, 0],
        [1, 0],
        [Number.NaN, 1],
      ],
      /NaN/,
    ],
  ] as const)('refuse points that are %s', (_, points, why) => {
    for (const fit of [circleAlgebraic, circleGeometric, circleLinear, circleTaubin]) {
      expect(() => fit(points)).toThrow(RangeError);
      expect(() => fit(points)).toThrow(why);
    }
  });
});
