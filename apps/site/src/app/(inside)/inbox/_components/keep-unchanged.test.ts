import { expect, it } from 'vitest';
import { keepUnchanged } from './keep-unchanged.ts';

it('keeps the objects of rows that say the same, in the new order, and takes the new one of a row that changed', () => {
  const before = [
    { id: 'a', claim: null },
    { id: 'b', claim: { name: 'Tamsin' } },
    { id: 'gone', claim: null },
  ];
  const now = [
    { id: 'b', claim: { name: 'Tamsin' } },
    { id: 'a', claim: { name: 'Odile' } },
    { id: 'new', claim: null },
  ];
  const kept = keepUnchanged<{ id: string; claim: { name: string } | null }>(before, now);
  expect(kept).toEqual(now);
  expect(kept[0]).toBe(before[1]);
  expect(kept[1]).toBe(now[1]);
});
