import { describe, expect, it } from 'vitest';
import { localDueInstant } from './local-due-instant.ts';

const due = (zone: string, localDate: string, localTime: string): string =>
  localDueInstant({ zone, localDate, localTime }).toISOString();

describe('localDueInstant', () => {
  it('refuses what is no date, time or zone', () => {
    expect(() => due('Europe/London', '2026-02-30', '09:00')).toThrow(RangeError);
    expect(() => due('Europe/London', '2026-02-03', '25:00')).toThrow(RangeError);
    expect(() => due('Europe/London', '2026-02-03', '9:00')).toThrow(RangeError);
    expect(() => due('Europe/Nowhere', '2026-02-03', '09:00')).toThrow(RangeError);
  });

  it('reads 24:00 as the start of the next day', () => {
    expect(due('Europe/London', '2026-03-28', '24:00')).toBe('2026-03-29T00:00:00.000Z');
  });
});
