import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { lockStudent } from '../students/lock-student.ts';
import { ownTrialOf } from './own-trial-of.ts';

/**
 * A student on trial, or one whose trial is over, says that they would like to join. Nothing is charged: the managers get
 * a letter, once. @throws ProblemError standing-not-possible for anybody else
 */
export const askToJoin = async ({ ctx }: Call<'askToJoin'>): Promise<Reply<'askToJoin'>> => {
  const { studentId } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const student = await lockStudent(tx, ctx, studentId);
    if (student.standing !== 'trial' && student.standing !== 'lapsed') {
      throw new ProblemError('standing-not-possible');
    }
    if (student.joinAskedAt !== null) return ownTrialOf(tx, ctx, student);
    const joinAskedAt = ctx.resources.clock.now();
    await tx.student.update({
      where: { academyId_id: { academyId: ctx.academyId, id: studentId } },
      data: { joinAskedAt },
    });
    await audit(tx, ctx, { action: 'ask-to-join', subject: `student:${studentId}` });
    await emit(tx, ctx, 'join.asked', { studentId });
    return ownTrialOf(tx, ctx, { ...student, joinAskedAt });
  });
};
