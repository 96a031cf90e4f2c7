import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import { localTime } from '@ballfirst/calendar/local-time';
import { quietShift } from '@ballfirst/calendar/quiet-shift';

type Quiet = { readonly from: string; readonly to: string } | null;

/** The hour of the daily look on the student's wall clock, an hour after check-ins; none is made up for after eight in the evening. */
const lookedAt = '09:00';
const untilLate = '20:00';

/**
 * The next daily look after an instant: at nine of the student's next local day, or at the end of their quiet hours.
 * @throws RangeError on an unknown zone
 */
export const nextLook = (now: Date, zone: string, quiet: Quiet = null): Date => {
  const on = (day: string): Date => {
    const usual = localDueInstant({ zone, localDate: day, localTime: lookedAt });
    return quiet === null ? usual : quietShift(usual, { zone, ...quiet });
  };
  const today = localDate(now, zone);
  return on(today) > now ? on(today) : on(addDays(today, 1));
};

/** Whether a reminder may go out now: between nine and eight in the evening of the wall clock, outside of quiet hours. */
export const mayRemindNow = (now: Date, zone: string, quiet: Quiet = null): boolean => {
  const time = localTime(now, zone);
  if (time < lookedAt || time >= untilLate) return false;
  return quiet === null || quietShift(now, { zone, ...quiet }).getTime() === now.getTime();
};
