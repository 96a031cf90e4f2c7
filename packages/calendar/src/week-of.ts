import { Temporal } from 'temporal-polyfill';
import type { LocalDate } from './zoned.ts';

/**
 * The Monday on which the ISO 8601 week of a local date begins.
 *
 * @throws RangeError on an impossible date
 * @example weekOf('2027-01-01') // '2026-12-28'
 */
export const weekOf = (date: LocalDate): LocalDate => {
  const day = Temporal.PlainDate.from(date);
  return day.subtract({ days: day.dayOfWeek - 1 }).toString();
};
