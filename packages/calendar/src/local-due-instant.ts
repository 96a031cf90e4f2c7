import { Temporal } from 'temporal-polyfill';
import { type LocalDate, type LocalTime, toDate, wallMoment } from './zoned.ts';

/**
 * The instant at which a local date and time is due in a zone. A time that does not exist moves forward by the gap;
 * one that occurs twice is the first.
 *
 * @param due - zone (IANA name), localDate 'YYYY-MM-DD', localTime 'HH:MM'
 * @throws RangeError on an unknown zone, an impossible date or time
 * @see RFC 5545 section 3.3.5 (form 3, local time with time zone reference)
 * @example localDueInstant({ zone: 'America/New_York', localDate: '2007-03-11', localTime: '02:30' }) // 07:30Z
 */
export const localDueInstant = (due: {
  readonly zone: string;
  readonly localDate: LocalDate;
  readonly localTime: LocalTime;
}): Date => toDate(wallMoment(Temporal.PlainDate.from(due.localDate), due.localTime, due.zone));
