import { ProblemError } from '@ballfirst/contracts/problems';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { meansOf } from './means-of.ts';

/** What the student told about time, place, goal and body. */
export const readMeans = async ({ ctx }: Pick<Call<'readMeans'>, 'ctx'>): Promise<Reply<'readMeans'>> => {
  const { studentId } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await tx.student.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: studentId } },
    });
    if (row === null) throw new ProblemError('not-found');
    return meansOf(row);
  });
};
