import type { WorkingHours } from '@ballfirst/calendar/working-hours';
import { workingHoursBetween } from '@ballfirst/calendar/working-hours-between';
import { quantile } from '@ballfirst/numbers/quantile';
import { shareOf } from '@ballfirst/progress/shares';
import { workingHoursOf } from '../academy/working-hours-of.ts';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { staffRoleOf } from '../staff/staff-role-of.ts';

type Answered = { readonly sentAt: Date; readonly repliedAt: Date; readonly answerBy: Date };

/** How long answers took, in working hours, and how many kept the promise. */
const turnaround = (answers: readonly Answered[], working: WorkingHours): Reply<'readCoaches'>['all'] => {
  const hours = answers.map(({ sentAt, repliedAt }) => workingHoursBetween(sentAt, repliedAt, working));
  const inTime = answers.filter(({ repliedAt, answerBy }) => repliedAt <= answerBy).length;
  return {
    answered: answers.length,
    hoursHalf: hours.length === 0 ? null : quantile(hours, 0.5),
    hoursMost: hours.length === 0 ? null : quantile(hours, 0.9),
    kept: shareOf(inTime, answers.length),
  };
};

/** What waits, and how each coach answered over the last days: half and nine in ten of the replies, and the promise. */
export const readCoaches = async ({ ctx, input }: Call<'readCoaches'>): Promise<Reply<'readCoaches'>> => {
  requireManager(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const since = new Date(now.getTime() - input.days * 86_400_000);
    const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
    const working = workingHoursOf(academy);
    const staff = await tx.membership.findMany({
      where: { academyId, role: { in: ['coach', 'manager'] }, endedAt: null },
      orderBy: [{ name: 'asc' }, { id: 'asc' }],
    });
    const replies = await tx.reply.findMany({
      where: { academyId, status: 'sent', sentAt: { gte: since } },
      select: { byMembership: true, sentAt: true, submission: { select: { sentAt: true, answerBy: true } } },
    });
    const waiting = await tx.submission.findMany({
      where: { academyId, status: 'waiting' },
      select: { sentAt: true, answerBy: true, claimedBy: true, claimExpiresAt: true },
      orderBy: { sentAt: 'asc' },
    });
    const askedAgain = await tx.auditEntry.count({
      where: { academyId, action: 'ask-to-film-again', at: { gte: since } },
    });
    const answers = replies.flatMap(({ byMembership, sentAt, submission }) =>
      sentAt === null
        ? []
        : [{ by: byMembership, sentAt: submission.sentAt, repliedAt: sentAt, answerBy: submission.answerBy }],
    );
    return {
      days: input.days,
      waiting: waiting.length,
      late: waiting.filter(({ answerBy }) => answerBy < now).length,
      oldestSentAt: waiting[0]?.sentAt.toISOString() ?? null,
      promiseHours: academy.promiseHours,
      filmAgain: shareOf(askedAgain, askedAgain + answers.length),
      all: turnaround(answers, working),
      items: staff.map(({ id, name, role }) => ({
        ...{ id, name, role: staffRoleOf(role) },
        claimed: waiting.filter(
          ({ claimedBy, claimExpiresAt }) =>
            claimedBy === id && claimExpiresAt !== null && claimExpiresAt > now,
        ).length,
        ...turnaround(
          answers.filter(({ by }) => by === id),
          working,
        ),
      })),
    };
  });
};
