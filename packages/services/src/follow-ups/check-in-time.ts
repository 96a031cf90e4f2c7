import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import { localTime } from '@ballfirst/calendar/local-time';
import { quietShift } from '@ballfirst/calendar/quiet-shift';

/** The hour at which a student is asked, on their own wall clock: common practice, no source. */
const askedAt = '08:00';

/**
 * When a check-in is due: so many local days after the reply, at eight in the morning of the student's wall clock, or at the
 * end of their quiet hours. The wall time is what is kept; the instant follows from it over clock changes.
 * @throws RangeError on an unknown zone
 */
export const checkInTime = (of: {
  readonly sentAt: Date;
  readonly days: number;
  readonly zone: string;
  readonly quiet?: { readonly from: string; readonly to: string } | null;
}): { localTime: string; zone: string; dueAt: Date } => {
  const { zone } = of;
  const day = addDays(localDate(of.sentAt, zone), of.days);
  const usual = localDueInstant({ zone, localDate: day, localTime: askedAt });
  const dueAt = of.quiet == null ? usual : quietShift(usual, { zone, ...of.quiet });
  return { localTime: `${localDate(dueAt, zone)}T${localTime(dueAt, zone)}`, zone, dueAt };
};
