import fc from 'fast-check';
import { expect, it } from 'vitest';
import { newcombeDifference } from './newcombe-difference.ts';

// Source: Newcombe 1998, Statistics in Medicine 17:873, table II, method 10 (from memory), to four places.
it.each([
  [56, 70, 48, 80, 0.0524, 0.3339],
  [9, 10, 3, 10, 0.1705, 0.809],
  [5, 56, 0, 29, -0.0381, 0.1926],
  [0, 10, 0, 10, -0.2775, 0.2775],
  [10, 10, 0, 20, 0.6791, 1],
])('of %d/%d and %d/%d', (a, m, b, n, low, high) => {
  const found = newcombeDifference({ successes: a, n: m }, { successes: b, n });
  expect(found.low).toBeCloseTo(low, 4);
  expect(found.high).toBeCloseTo(high, 4);
});

it('turns round with the shares', () => {
  const counted = fc
    .integer({ min: 1, max: 60 })
    .chain((n) => fc.record({ n: fc.constant(n), successes: fc.nat(n) }));
  fc.assert(
    fc.property(counted, counted, (a, b) => {
      const there = newcombeDifference(a, b);
      const back = newcombeDifference(b, a);
      expect(there.low).toBeCloseTo(-back.high, 12);
      expect(there.high).toBeCloseTo(-back.low, 12);
    }),
  );
});
