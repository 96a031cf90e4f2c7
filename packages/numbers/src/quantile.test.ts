import { expect, it } from 'vitest';
import { quantile } from './quantile.ts';

// Source: R's quantile(), type 7 (its default), for 1:10 (from memory): 3.25, 5.5, 9.1.
it.each([
  [0.25, 3.25],
  [0.5, 5.5],
  [0.9, 9.1],
  [0, 1],
  [1, 10],
])('of one to ten at %d is %d', (share, value) => {
  expect(quantile([10, 9, 8, 7, 6, 5, 4, 3, 2, 1], share)).toBeCloseTo(value, 12);
});

it('refuses what has none', () => {
  expect(() => quantile([], 0.5)).toThrow(RangeError);
  expect(() => quantile([1, Number.NaN], 0.5)).toThrow(RangeError);
  expect(() => quantile([1], 1.01)).toThrow(RangeError);
});
