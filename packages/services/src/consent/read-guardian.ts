import { ProblemError } from '@ballfirst/contracts/problems';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { guardianState } from './guardian-state.ts';

/** Where the consent of the student's guardian stands. */
export const readGuardian = async ({
  ctx,
}: Pick<Call<'readGuardian'>, 'ctx'>): Promise<Reply<'readGuardian'>> => {
  const { studentId } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const student = await tx.student.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: studentId } },
    });
    if (student === null) throw new ProblemError('not-found');
    return guardianState(tx, ctx, student);
  });
};
