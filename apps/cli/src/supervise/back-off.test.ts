import { expect, it } from 'vitest';
import { backOffMs } from './back-off.ts';

it('doubles from half a second to half a minute', () => {
  expect([1, 2, 3, 6, 7, 50].map(backOffMs)).toEqual([500, 1_000, 2_000, 16_000, 30_000, 30_000]);
});
