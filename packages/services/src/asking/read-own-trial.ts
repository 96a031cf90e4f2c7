import { ProblemError } from '@ballfirst/contracts/problems';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { studentInclude } from '../rows.ts';
import { ownTrialOf } from './own-trial-of.ts';

/** The student's own trial: then and now, what was done, what it costs to go on. */
export const readOwnTrial = async ({ ctx }: Call<'readOwnTrial'>): Promise<Reply<'readOwnTrial'>> => {
  const { studentId: id } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const student = await tx.student.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id } },
      include: studentInclude,
    });
    if (student === null) throw new ProblemError('not-found');
    return ownTrialOf(tx, ctx, student);
  });
};
