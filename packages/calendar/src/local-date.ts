import { Temporal } from 'temporal-polyfill';
import { type LocalDate, onWall } from './zoned.ts';

/** The date 'YYYY-MM-DD' a person in `zone` reads at that instant. @throws RangeError on an unknown zone. */
export const localDate = (instant: Date, zone: string): LocalDate =>
  onWall(instant, zone).toPlainDate().toString();

/** A local date so many days later (earlier when negative). @throws RangeError on an impossible date. */
export const addDays = (date: LocalDate, days: number): LocalDate =>
  Temporal.PlainDate.from(date).add({ days }).toString();

/** Whole days from one local date to another; negative when `to` lies before `from`. */
export const daysBetween = (from: LocalDate, to: LocalDate): number =>
  Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'day' }).days;
