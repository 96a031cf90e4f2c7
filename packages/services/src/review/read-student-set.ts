import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { studentSetOf } from './student-set-of.ts';

/** What is known of the student's set with the club of a swing. @throws ProblemError not-found */
export const readStudentSet = async ({
  ctx,
  input,
}: Call<'readStudentSet'>): Promise<Reply<'readStudentSet'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findSubmission(tx, ctx, input.id);
    return studentSetOf(tx, ctx, { ...row, hand: row.student.hand });
  });
};
