import { newcombeDifference } from '@ballfirst/numbers/newcombe-difference';
import { expectedAgain, shareReliability } from '@ballfirst/numbers/shrunk-share';
import { describe, expect, it } from 'vitest';

describe('difference of two shares', () => {
  // Source: Newcombe 1998, Statistics in Medicine 17:873, table II, method 10; counts from memory, limits reproduced.
  it.each([
    [56, 70, 48, 80, 0.0524, 0.3339],
    [9, 10, 3, 10, 0.1705, 0.809],
    [6, 7, 2, 7, 0.0582, 0.8062],
    [5, 56, 0, 29, -0.0381, 0.1926],
  ])('%d/%d less %d/%d', (a, m, b, n, low, high) => {
    const found = newcombeDifference({ successes: a, n: m }, { successes: b, n });
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });
});

describe('luck in ten balls', () => {
  // Source: computed independently of this project: six fat of ten, from players at .35 with SD .12, are 4.5 next time.
  it('six of ten are 4.5 of ten next time', () => {
    const population = { mean: 0.35, sd: 0.12 };
    expect(shareReliability(population, 10)).toBeCloseTo(0.388, 3);
    expect(10 * expectedAgain(0.6, population, 10)).toBeCloseTo(4.5, 1);
    expect(() => expectedAgain(1.2, population, 10)).toThrow(RangeError);
    expect(() => shareReliability({ mean: 0, sd: 0.1 }, 10)).toThrow(RangeError);
  });
});
