import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { requireReader } from '../authorise.ts';
import type { Context } from '../context.ts';
import { type SubmissionRow, submissionInclude } from '../rows.ts';

/** A submission the actor may see. @throws ProblemError not-found */
export const findSubmission = async (tx: Tx, ctx: Context, id: string): Promise<SubmissionRow> => {
  const { academyId } = ctx;
  const row = await tx.submission.findUnique({
    where: { academyId_id: { academyId, id } },
    include: submissionInclude,
  });
  if (row === null) throw new ProblemError('not-found');
  requireReader(ctx, row.studentId);
  return row;
};

/** The same, held against other writers to the end of the transaction. @throws ProblemError not-found */
export const lockSubmission = async (tx: Tx, ctx: Context, id: string): Promise<SubmissionRow> => {
  await tx.$queryRaw`SELECT id FROM public.submission
    WHERE academy_id = ${ctx.academyId}::uuid AND id = ${id}::uuid FOR UPDATE`;
  return findSubmission(tx, ctx, id);
};
