import { expect, it } from 'vitest';
import { localDayInWords } from './local-day.ts';

it('says a calendar day', () => {
  expect(localDayInWords('2026-11-02')).toBe('2 Nov');
});
