import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import { localTime } from '@ballfirst/calendar/local-time';

/** The hour of the daily look on the student's wall clock, an hour after check-ins; none is made up for after eight in the evening. */
const lookedAt = '09:00';
const untilLate = '20:00';

/** The next daily look after an instant: at nine of the student's next local day. @throws RangeError on an unknown zone */
export const nextLook = (now: Date, zone: string): Date => {
  const today = localDate(now, zone);
  const at = localDueInstant({ zone, localDate: today, localTime: lookedAt });
  return at > now ? at : localDueInstant({ zone, localDate: addDays(today, 1), localTime: lookedAt });
};

/** Whether a reminder may go out now: between nine and eight in the evening of the student's wall clock. */
export const mayRemindNow = (now: Date, zone: string): boolean => {
  const time = localTime(now, zone);
  return time >= lookedAt && time < untilLate;
};
