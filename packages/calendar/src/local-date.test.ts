import { describe, expect, it } from 'vitest';
import { addDays, daysBetween, localDate } from './local-date.ts';
import { localMidnightEnd } from './local-midnight-end.ts';
import { weekOf } from './week-of.ts';

describe('localDate', () => {
  it('is the date on the wall of the zone', () => {
    expect(localDate(new Date('2026-01-01T02:00Z'), 'America/New_York')).toBe('2025-12-31');
    expect(localDate(new Date('2026-01-01T13:00Z'), 'Pacific/Auckland')).toBe('2026-01-02');
  });
  it('refuses an invalid instant', () => {
    expect(() => localDate(new Date('never'), 'Europe/London')).toThrow(RangeError);
  });
  it('counts days over a leap day and a clock change', () => {
    expect(daysBetween('2024-02-28', '2024-03-01')).toBe(2);
    expect(daysBetween('2026-03-30', '2026-03-27')).toBe(-3);
    expect(addDays('2024-02-28', 2)).toBe('2024-03-01');
  });
});

describe('localMidnightEnd', () => {
  it('ends the last day at the local midnight, whatever hour it began', () => {
    const zone = 'America/New_York';
    const end = '2026-03-15T04:00:00.000Z';
    expect(localMidnightEnd({ startedAt: new Date('2026-03-01T05:00Z'), days: 14, zone }).toISOString()).toBe(
      end,
    );
    expect(localMidnightEnd({ startedAt: new Date('2026-03-02T04:59Z'), days: 14, zone }).toISOString()).toBe(
      end,
    );
  });
  it('takes the first moment of the day where midnight is left out', () => {
    // Cairo, 25 April 2025: summer time began at 00:00, which became 01:00 (IANA tzdata, Africa/Cairo).
    const end = localMidnightEnd({ startedAt: new Date('2025-04-24T08:00Z'), days: 1, zone: 'Africa/Cairo' });
    expect(end.toISOString()).toBe('2025-04-24T22:00:00.000Z');
  });
  it('refuses less than a day', () => {
    expect(() => localMidnightEnd({ startedAt: new Date(0), days: 0, zone: 'UTC' })).toThrow(RangeError);
    expect(() => localMidnightEnd({ startedAt: new Date(0), days: 1.5, zone: 'UTC' })).toThrow(RangeError);
  });
});

describe('weekOf', () => {
  it('begins on Monday, across the year', () => {
    expect(weekOf('2026-10-05')).toBe('2026-10-05');
    expect(weekOf('2026-10-11')).toBe('2026-10-05');
    expect(weekOf('2027-01-01')).toBe('2026-12-28');
  });
});
