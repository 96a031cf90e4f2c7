import { expect, it } from 'vitest';
import { bestOf } from './best-of.ts';

const swing = (id: string, day: number, balls: number, solid: number) => ({
  ...{ id, balls, solid },
  sentAt: new Date(Date.UTC(2026, 2, day)),
});

it('is the one with most solid balls for its number, of equals the latest', () => {
  expect(
    bestOf([swing('a', 1, 10, 4), swing('b', 2, 10, 6), swing('c', 3, 20, 12), swing('d', 4, 10, 5)]),
  ).toBe('c');
});

it('leaves out what was counted over too few balls, and sets without a solid one', () => {
  expect(bestOf([swing('a', 1, 4, 4), swing('b', 2, 10, 0)])).toBeNull();
  expect(bestOf([swing('a', 1, 4, 4), swing('b', 2, 5, 1)])).toBe('b');
  expect(bestOf([])).toBeNull();
});
