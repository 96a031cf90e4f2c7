import { ProblemError } from '@ballfirst/contracts/problems';
import { Standing } from '@ballfirst/contracts/words';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { lockStudent } from './lock-student.ts';
import { mayMove } from './standing-moves.ts';
import { studentDetail } from './student-detail.ts';
import { trialPeriod } from './trial-period.ts';

/**
 * Changes the standing of a student; its history keeps who, when and why. A trial given (again) starts now, or at the
 * next swing where the academy starts trials so.
 * @throws ProblemError not-found, standing-not-possible
 */
export const changeStanding = async ({
  ctx,
  input,
}: Call<'changeStanding'>): Promise<Reply<'changeStanding'>> => {
  const { membershipId } = requireManager(ctx);
  return once(ctx, 'changeStanding', async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const student = await lockStudent(tx, ctx, input.id);
    const from = Standing.parse(student.standing);
    if (!mayMove(from, input.to)) throw new ProblemError('standing-not-possible');
    const { academy, membership } = student;
    const starts = academy.trialStarts === 'joining';
    const trial = starts
      ? trialPeriod({ startedAt: now, days: academy.trialDays, zone: membership.zone })
      : { trialStartedAt: null, trialEndsAt: null };
    await tx.student.update({
      where: { academyId_id: { academyId, id: student.id } },
      data: {
        standing: input.to,
        // A wish to join is answered by the change, whichever it is.
        joinAskedAt: null,
        ...(input.to === 'trial' ? trial : {}),
      },
    });
    await tx.standingChange.create({
      data: {
        academyId,
        id: newId(),
        studentId: student.id,
        fromStanding: from,
        toStanding: input.to,
        reason: input.reason,
        byMembership: membershipId,
        at: now,
      },
    });
    await audit(tx, ctx, {
      action: 'change-standing',
      subject: `student:${student.id}`,
      detail: { from, to: input.to },
    });
    await emit(tx, ctx, 'standing.changed', { studentId: student.id, to: input.to });
    return studentDetail(tx, ctx, student.id);
  });
};
