import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSubmission } from './lock-submission.ts';
import { submissionOf } from './submission-of.ts';

/** One submission with its clips. @throws ProblemError not-found */
export const readSubmission = ({ ctx, input }: Call<'readSubmission'>): Promise<Reply<'readSubmission'>> =>
  inTransaction(ctx, async (tx) =>
    submissionOf(await findSubmission(tx, ctx, input.id), ctx.resources.clock.now()),
  );
