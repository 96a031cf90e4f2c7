import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import type { Tx } from '@ballfirst/db/with-academy';
import type { StudentRow } from '../rows.ts';

/** Letters a person asked for themselves: they do not count as the message of a day. */
const askedFor = ['reset', 'invitation'];

/**
 * Whether a student has had a letter on this day of their own calendar, or one is on its way: a reply that has gone out
 * and a check-in that is due today count from that moment, though their letters be written later.
 */
export const writtenToday = async (tx: Tx, student: StudentRow, now: Date): Promise<boolean> => {
  const { academyId, id: studentId, membership } = student;
  const { zone } = membership;
  const today = localDate(now, zone);
  const midnight = (days: number): Date =>
    localDueInstant({ zone, localDate: addDays(today, days), localTime: '00:00' });
  const [from, until] = [midnight(0), midnight(1)];
  const mail = await tx.mail.count({
    where: { academyId, toMembership: membership.id, at: { gte: from }, kind: { notIn: askedFor } },
  });
  if (mail > 0) return true;
  const checkIns = await tx.checkIn.count({
    where: {
      ...{ academyId, studentId },
      OR: [
        { status: 'scheduled', dueAt: { lt: until }, programme: { status: 'open' } },
        { status: 'sent', sentAt: { gte: from } },
      ],
    },
  });
  if (checkIns > 0) return true;
  const replies = await tx.reply.count({
    where: { academyId, status: 'sent', sentAt: { gte: from }, submission: { studentId } },
  });
  return replies > 0;
};
