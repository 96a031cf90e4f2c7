import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addWorkingHours } from './add-working-hours.ts';
import { workBefore } from './work-before.ts';
import type { WorkingHours } from './working-hours.ts';
import { workingHoursBetween } from './working-hours-between.ts';

const day = [['09:00', '17:00']] as const;
const nineToFive: WorkingHours = {
  zone: 'Europe/London',
  week: { mon: day, tue: day, wed: day, thu: day, fri: day },
  holidays: ['2026-12-25', '2026-12-28'],
};
const split: WorkingHours = {
  zone: 'America/New_York',
  week: {
    mon: [
      ['13:00', '18:00'],
      ['08:00', '12:00'],
    ],
    sat: [['10:00', '24:00']],
    sun: [['00:00', '04:00']],
  },
  holidays: [],
};
const at = (iso: string): Date => new Date(iso);

describe('addWorkingHours', () => {
  it('carries Friday afternoon over the weekend', () => {
    expect(addWorkingHours(at('2026-01-09T16:00Z'), 2, nineToFive)).toEqual(at('2026-01-12T10:00Z'));
  });
  it('ends at closing time when the work fills the day', () => {
    expect(addWorkingHours(at('2026-01-09T09:00Z'), 8, nineToFive)).toEqual(at('2026-01-09T17:00Z'));
  });
  it('skips holidays', () => {
    expect(addWorkingHours(at('2026-12-24T16:00Z'), 2, nineToFive)).toEqual(at('2026-12-29T10:00Z'));
  });
  it('keeps wall hours over the change to summer time', () => {
    expect(addWorkingHours(at('2026-03-27T16:00Z'), 2, nineToFive)).toEqual(at('2026-03-30T09:00Z'));
  });
  it('counts true hours through a clock change inside open hours', () => {
    // New York, 8 March 2026: 02:00 becomes 03:00, so Sunday 00:00 to 04:00 lasts three hours.
    expect(workingHoursBetween(at('2026-03-08T05:00Z'), at('2026-03-08T12:00Z'), split)).toBe(3);
    expect(workingHoursBetween(at('2026-11-01T04:00Z'), at('2026-11-01T12:00Z'), split)).toBe(5);
  });
  it('leaves the instant alone for no work, and refuses nonsense', () => {
    expect(addWorkingHours(at('2026-01-10T03:00Z'), 0, nineToFive)).toEqual(at('2026-01-10T03:00Z'));
    expect(() => addWorkingHours(at('2026-01-10T03:00Z'), -1, nineToFive)).toThrow(RangeError);
    expect(() => addWorkingHours(at('2026-01-10T03:00Z'), Number.NaN, nineToFive)).toThrow(RangeError);
    expect(() => addWorkingHours(at('2026-01-10T03:00Z'), 1, { ...nineToFive, week: {} })).toThrow(/closed/);
    expect(() =>
      addWorkingHours(at('2026-01-10T03:00Z'), 1, { ...nineToFive, week: { sat: [['18:00', '09:00']] } }),
    ).toThrow(/before they begin/);
  });
  it('gives no hours on a date a zone left out', () => {
    const apia: WorkingHours = { zone: 'Pacific/Apia', week: { fri: day, sat: day }, holidays: [] };
    expect(workingHoursBetween(at('2011-12-29T00:00Z'), at('2012-01-01T10:00Z'), apia)).toBe(8);
  });
});

describe('workBefore', () => {
  it('moves an answer-by ahead by working hours', () => {
    expect(workBefore(at('2026-01-12T10:00Z'), 2, nineToFive)).toEqual(at('2026-01-09T16:00Z'));
    expect(workBefore(at('2026-01-12T09:00Z'), 8, nineToFive)).toEqual(at('2026-01-09T09:00Z'));
  });
  it('refuses what never ends', () => {
    expect(() => workBefore(at('2026-01-10T03:00Z'), 1, { ...nineToFive, week: {} })).toThrow(/closed/);
    expect(() => workBefore(at('2026-01-10T03:00Z'), -1, nineToFive)).toThrow(RangeError);
  });
});

describe('working hours hold together', () => {
  const instants = fc
    .integer({ min: Date.UTC(2025, 0, 1) / 60_000, max: Date.UTC(2027, 0, 1) / 60_000 })
    .map((minutes) => new Date(minutes * 60_000));
  const minutes = fc.integer({ min: 1, max: 60 * 60 });
  const plans = fc.constantFrom(nineToFive, split);

  it('adding and counting agree, both ways', () => {
    fc.assert(
      fc.property(instants, minutes, plans, (start, work, working) => {
        const later = addWorkingHours(start, work / 60, working);
        expect(workingHoursBetween(start, later, working)).toBeCloseTo(work / 60, 9);
        const earlier = workBefore(start, work / 60, working);
        expect(workingHoursBetween(earlier, start, working)).toBeCloseTo(work / 60, 9);
        // The latest start that still leaves the work done by `later` is not before the start we took.
        expect(workBefore(later, work / 60, working).getTime()).toBeGreaterThanOrEqual(start.getTime());
      }),
      { numRuns: 60, seed: 1 },
    );
  });
  it('adding in two parts equals adding at once', () => {
    fc.assert(
      fc.property(instants, minutes, minutes, plans, (start, first, second, working) => {
        const twice = addWorkingHours(addWorkingHours(start, first / 60, working), second / 60, working);
        expect(twice).toEqual(addWorkingHours(start, (first + second) / 60, working));
      }),
      { numRuns: 60, seed: 2 },
    );
  });
  it('counting backwards is the negative', () => {
    const a = at('2026-01-05T10:00Z');
    const b = at('2026-01-07T10:00Z');
    expect(workingHoursBetween(b, a, nineToFive)).toBe(-workingHoursBetween(a, b, nineToFive));
  });
});
