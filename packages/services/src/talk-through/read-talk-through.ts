import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { talkInclude, talkThroughOf } from './talk-through-of.ts';

/** The talk-through that goes with the reply to a swing, if there is one. @throws ProblemError not-found */
export const readTalkThrough = async ({
  ctx,
  input,
}: Call<'readTalkThrough'>): Promise<Reply<'readTalkThrough'>> => {
  requireStaff(ctx);
  const { academyId } = ctx;
  return inTransaction(ctx, async (tx) => {
    const { id: submissionId } = await findSubmission(tx, ctx, input.id);
    const where = { academyId_submissionId: { academyId, submissionId } };
    const row = await tx.talkThrough.findUnique({ where, include: talkInclude });
    return { talkThrough: row === null ? null : talkThroughOf(row) };
  });
};
