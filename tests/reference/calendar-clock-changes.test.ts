import { addDays } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import { describe, expect, it } from 'vitest';

const due = (zone: string, localDate: string, localTime: string): string =>
  localDueInstant({ zone, localDate, localTime }).toISOString();

describe('RFC 5545 section 3.3.5, local time with time zone reference', () => {
  it('a time that occurs twice is the first: 2007-11-04 01:30 New York is EDT', () => {
    expect(due('America/New_York', '2007-11-04', '01:30')).toBe('2007-11-04T05:30:00.000Z');
  });
  it('a time that does not exist moves by the gap: 2007-03-11 02:30 New York is 03:30 EDT', () => {
    expect(due('America/New_York', '2007-03-11', '02:30')).toBe('2007-03-11T07:30:00.000Z');
  });
});

describe('RFC 5545 section 3.8.5.3, weekly for ten occurrences from 1997-09-02 09:00 New York', () => {
  it('eight stand in EDT, two in EST', () => {
    const hours = Array.from({ length: 10 }, (_, week) =>
      due('America/New_York', addDays('1997-09-02', 7 * week), '09:00').slice(5, 16),
    );
    expect(hours).toEqual([
      '09-02T13:00',
      '09-09T13:00',
      '09-16T13:00',
      '09-23T13:00',
      '09-30T13:00',
      '10-07T13:00',
      '10-14T13:00',
      '10-21T13:00',
      '10-28T14:00',
      '11-04T14:00',
    ]);
  });
});

// Derived from the IANA time zone database (America: second Sunday of March, first of November; London: last Sundays).
describe('09:00 local in UTC around the changes of 2025', () => {
  it.each([
    ['America/New_York', '2025-03-04', '14:00'],
    ['America/New_York', '2025-03-11', '13:00'],
    ['America/New_York', '2025-10-28', '13:00'],
    ['America/New_York', '2025-11-04', '14:00'],
    ['Europe/London', '2025-03-25', '09:00'],
    ['Europe/London', '2025-04-01', '08:00'],
    ['Europe/London', '2025-10-21', '08:00'],
    ['Europe/London', '2025-10-28', '09:00'],
  ])('%s %s is %sZ', (zone, date, utc) => {
    expect(due(zone, date, '09:00')).toBe(`${date}T${utc}:00.000Z`);
  });

  it('New York and London lie four hours apart from 9 to 29 March and 26 October to 1 November, else five', () => {
    const apart = (date: string): number =>
      (localDueInstant({ zone: 'America/New_York', localDate: date, localTime: '09:00' }).getTime() -
        localDueInstant({ zone: 'Europe/London', localDate: date, localTime: '09:00' }).getTime()) /
      3_600_000;
    for (let date = '2025-01-01'; date <= '2025-12-31'; date = addDays(date, 1)) {
      const four =
        (date >= '2025-03-09' && date <= '2025-03-29') || (date >= '2025-10-26' && date <= '2025-11-01');
      expect([date, apart(date)]).toEqual([date, four ? 4 : 5]);
    }
  });
});
