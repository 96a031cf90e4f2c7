import { Temporal } from 'temporal-polyfill';

/**
 * Time in this package: instants are JS `Date`s, local dates 'YYYY-MM-DD', local times 'HH:MM' (00:00..24:00),
 * zones IANA names. Wall time is kept over clock changes; nothing here reads the machine's own clock or zone.
 */
export type LocalDate = string;
export type LocalTime = string;

const timePattern = /^([01]\d|2[0-3]):([0-5]\d)$/;

/** The instant of a Temporal value as a `Date` (whole milliseconds). */
export const toDate = (at: Temporal.ZonedDateTime): Date => new Date(at.epochMilliseconds);

/** An instant seen on the wall clock of a zone. @throws RangeError on an invalid date or an unknown zone. */
export const onWall = (instant: Date, zone: string): Temporal.ZonedDateTime => {
  const ms = instant.getTime();
  if (!Number.isFinite(ms)) throw new RangeError('The instant is not a valid date.');
  return Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(zone);
};

/** A wall-clock moment of a zone; 24:00 is the start of the next day. Gap: forward; twice: the first (or `later`). */
export const wallMoment = (
  day: Temporal.PlainDate,
  time: LocalTime,
  zone: string,
  disambiguation: 'compatible' | 'later' = 'compatible',
): Temporal.ZonedDateTime => {
  if (time === '24:00') return day.add({ days: 1 }).toZonedDateTime(zone);
  if (!timePattern.test(time)) throw new RangeError(`"${time}" is not a time between 00:00 and 24:00.`);
  return day.toPlainDateTime(Temporal.PlainTime.from(time)).toZonedDateTime(zone, { disambiguation });
};
