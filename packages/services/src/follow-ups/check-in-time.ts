import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';

/** The hour at which a student is asked, on their own wall clock: common practice, no source. */
const askedAt = '08:00';

/**
 * When a check-in is due: so many local days after the reply, at eight in the morning of the student's wall clock. The
 * wall time is what is kept; the instant follows from it over clock changes.
 * @throws RangeError on an unknown zone
 */
export const checkInTime = (of: {
  readonly sentAt: Date;
  readonly days: number;
  readonly zone: string;
}): { localTime: string; zone: string; dueAt: Date } => {
  const day = addDays(localDate(of.sentAt, of.zone), of.days);
  return {
    localTime: `${day}T${askedAt}`,
    zone: of.zone,
    dueAt: localDueInstant({ zone: of.zone, localDate: day, localTime: askedAt }),
  };
};
