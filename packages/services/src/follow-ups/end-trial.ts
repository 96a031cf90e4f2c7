import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { emit } from '../outbox.ts';
import { lockStudent } from '../students/lock-student.ts';

/**
 * Ends a trial at its last midnight: the student lapses, once; the event standing.changed brings the letter
 * (`tellStanding`).
 * @returns ended: false when the trial still runs, or the student is on none any more
 * @throws ProblemError not-found
 */
export const endTrial = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { studentId: string };
}): Promise<{ ended: boolean }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const student = await lockStudent(tx, ctx, input.studentId);
    const { trialEndsAt } = student;
    if (student.standing !== 'trial' || trialEndsAt === null || trialEndsAt > now) return { ended: false };
    await tx.student.update({
      where: { academyId_id: { academyId, id: student.id } },
      data: { standing: 'lapsed' },
    });
    await tx.standingChange.create({
      data: {
        academyId,
        id: newId(),
        studentId: student.id,
        fromStanding: 'trial',
        toStanding: 'lapsed',
        reason: 'trial-ended',
        at: now,
      },
    });
    await audit(tx, ctx, { action: 'end-trial', subject: `student:${student.id}` });
    await emit(tx, ctx, 'standing.changed', { studentId: student.id, to: 'lapsed' });
    return { ended: true };
  });
};
