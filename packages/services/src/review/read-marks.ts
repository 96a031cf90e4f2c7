import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { clipOfSubmission } from './clip-of-submission.ts';
import { readMarking } from './marking-of.ts';

/** The marks and observations of one clip. @throws ProblemError not-found */
export const readMarks = async ({ ctx, input }: Call<'readMarks'>): Promise<Reply<'readMarks'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findSubmission(tx, ctx, input.id);
    return readMarking(tx, ctx, clipOfSubmission(row, input.clipId));
  });
};
