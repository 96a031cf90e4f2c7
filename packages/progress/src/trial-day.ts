import { daysBetween, localDate } from '@ballfirst/calendar/local-date';

/**
 * Which day of a trial it is for the student: 1 on the local date it started, 0 before it.
 * Day `days` is the last one where the trial ends by calendar's `localMidnightEnd`.
 *
 * @throws RangeError on an invalid date or an unknown zone
 */
export const trialDay = (startedAt: Date, now: Date, zone: string): number =>
  now < startedAt ? 0 : daysBetween(localDate(startedAt, zone), localDate(now, zone)) + 1;

/** Days left, the running one included; 0 once the trial has ended. */
export const trialDaysLeft = (startedAt: Date, days: number, now: Date, zone: string): number =>
  Math.max(0, Math.min(days, days + 1 - trialDay(startedAt, now, zone)));
