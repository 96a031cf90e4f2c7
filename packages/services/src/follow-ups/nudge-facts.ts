import { daysBetween, localDate } from '@ballfirst/calendar/local-date';
import type { Tx } from '@ballfirst/db/with-academy';
import type { NudgeFacts } from '@ballfirst/progress/choose-nudge';
import type { StudentRow } from '../rows.ts';

/** What a reminder looks at, as it stands for one student now. */
export const nudgeFacts = async (tx: Tx, student: StudentRow, now: Date): Promise<NudgeFacts> => {
  const { academyId, id: studentId } = student;
  const { zone } = student.membership;
  const of = { academyId, studentId };
  const today = localDate(now, zone);
  const daysSince = (at: Date): number => daysBetween(localDate(at, zone), today);
  const submission = await tx.submission.findFirst({ where: of, orderBy: { sentAt: 'desc' } });
  const reply = await tx.reply.findFirst({
    where: { academyId, status: 'sent', submission: { studentId } },
    orderBy: { sentAt: 'desc' },
  });
  const checkIn = await tx.checkIn.findFirst({
    where: { ...of, status: 'sent', programme: { status: 'open' } },
    orderBy: { dueAt: 'desc' },
  });
  const programme = await tx.programme.findFirst({
    where: { ...of, status: 'open' },
    include: { entries: { orderBy: { at: 'desc' }, take: 1 } },
  });
  const askedAgain =
    submission?.status === 'film-again'
      ? await tx.mail.findFirst({
          where: { academyId, toMembership: student.membershipId, kind: 'film-again' },
          orderBy: { at: 'desc' },
        })
      : null;
  const [lastEntry] = programme?.entries ?? [];
  // The last day of a trial is the one before the midnight that ends it.
  const endsOn =
    student.trialEndsAt === null ? null : localDate(new Date(student.trialEndsAt.getTime() - 1), zone);
  return {
    onTrial: student.standing === 'trial',
    trialDaysLeft: endsOn === null ? null : daysBetween(today, endsOn),
    trialEndsOn: endsOn,
    daysSinceJoining: daysSince(student.createdAt),
    everSent: submission !== null,
    waitsForCoach: submission?.status === 'waiting' || submission?.status === 'preparing',
    filmAgain:
      submission === null || askedAgain === null
        ? null
        : { submissionId: submission.id, days: daysSince(askedAgain.at) },
    unreadReply:
      reply === null || reply.sentAt === null || reply.readAt !== null
        ? null
        : { replyId: reply.id, days: daysSince(reply.sentAt) },
    checkIn:
      checkIn === null || checkIn.sentAt === null
        ? null
        : { checkInId: checkIn.id, days: daysSince(checkIn.sentAt) },
    programme:
      programme === null
        ? null
        : {
            programmeId: programme.id,
            lastEntryId: lastEntry?.id ?? null,
            days: daysSince(lastEntry?.at ?? programme.createdAt),
          },
  };
};
