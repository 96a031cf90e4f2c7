import { localMidnightEnd } from '@ballfirst/calendar/local-midnight-end';
import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { lockStudent } from './lock-student.ts';
import { studentDetail } from './student-detail.ts';

/**
 * Gives a trial more days: an open one from its end on, a lapsed one from today on. It ends at a local midnight of the
 * student, as every trial does. A trial that has not begun is not longer for it.
 * @throws ProblemError not-found, standing-not-possible, wrong-state
 */
export const extendTrial = async ({ ctx, input }: Call<'extendTrial'>): Promise<Reply<'extendTrial'>> => {
  const { membershipId } = requireManager(ctx);
  return once(ctx, 'extendTrial', async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const student = await lockStudent(tx, ctx, input.id);
    const { standing, trialEndsAt } = student;
    if (standing !== 'trial' && standing !== 'lapsed') throw new ProblemError('standing-not-possible');
    if (trialEndsAt === null) {
      throw new ProblemError('wrong-state', 'This trial begins with the first swing; it has not begun yet.');
    }
    // A midnight that ends a day is the first moment of the next: counted from there, that day is the first one given.
    const from = standing === 'trial' && trialEndsAt > now ? trialEndsAt : now;
    const ends = localMidnightEnd({ startedAt: from, days: input.days, zone: student.membership.zone });
    await tx.student.update({
      where: { academyId_id: { academyId, id: student.id } },
      data: { standing: 'trial', trialEndsAt: ends },
    });
    await tx.standingChange.create({
      data: {
        ...{ academyId, id: newId(), studentId: student.id, fromStanding: standing, toStanding: 'trial' },
        ...{ reason: input.reason, byMembership: membershipId, at: now },
      },
    });
    await audit(tx, ctx, {
      action: 'extend-trial',
      subject: `student:${student.id}`,
      detail: { days: input.days, from: standing },
    });
    await emit(tx, ctx, 'standing.changed', { studentId: student.id, to: 'trial' });
    return studentDetail(tx, ctx, student.id);
  });
};
