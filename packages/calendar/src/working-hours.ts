import type { Temporal } from 'temporal-polyfill';
import { type LocalDate, type LocalTime, wallMoment } from './zoned.ts';

export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export type Weekday = (typeof weekdays)[number];

/** From and to on the wall clock of one day; '24:00' is its end. */
export type OpenHours = readonly [from: LocalTime, to: LocalTime];

/** When an academy works: its zone, open hours by weekday (a missing day is closed), closed dates 'YYYY-MM-DD'. */
export type WorkingHours = {
  readonly zone: string;
  readonly week: Readonly<Partial<Record<Weekday, readonly OpenHours[]>>>;
  readonly holidays: readonly LocalDate[];
};

/** A stretch of open time in epoch milliseconds, `from` included, `to` not. */
export type OpenStretch = { readonly fromMs: number; readonly toMs: number };

/** Days looked through before we say that no working hour is in sight (about three years, a sabbatical included). */
export const horizonDays = 1100;

/**
 * The open stretches of one local day, in order, overlapping ones joined. Their lengths are true elapsed time: a
 * stretch over a clock change is an hour shorter or longer than its wall times say.
 *
 * @throws RangeError where hours end before they begin
 */
export const openStretchesOn = (day: Temporal.PlainDate, working: WorkingHours): readonly OpenStretch[] => {
  const weekday = weekdays[day.dayOfWeek - 1];
  const hours = weekday === undefined ? undefined : working.week[weekday];
  if (hours === undefined || hours.length === 0 || working.holidays.includes(day.toString())) return [];
  const stretches = hours.flatMap(([from, to]) => {
    if (from >= to) throw new RangeError(`Open hours ${from} to ${to} end before they begin.`);
    const opens = wallMoment(day, from, working.zone);
    // A date that a zone skipped altogether (Apia, 30 December 2011) has no open hours.
    if (!opens.toPlainDate().equals(day)) return [];
    return [{ fromMs: opens.epochMilliseconds, toMs: wallMoment(day, to, working.zone).epochMilliseconds }];
  });
  const joined: { fromMs: number; toMs: number }[] = [];
  for (const next of stretches.sort((a, b) => a.fromMs - b.fromMs)) {
    const last = joined.at(-1);
    if (last !== undefined && next.fromMs <= last.toMs) last.toMs = Math.max(last.toMs, next.toMs);
    else if (next.toMs > next.fromMs) joined.push({ ...next });
  }
  return joined;
};
