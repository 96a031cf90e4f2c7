import { ProblemError } from '@ballfirst/contracts/problems';
import { claimSubmissionRow } from '@ballfirst/db/claims/claim-submission';
import { readOpenSubmission } from '@ballfirst/db/reads/open-submission';
import { requireStaff } from '../authorise.ts';
import type { Call, Reply } from '../operation-types.ts';
import { openedSubmission } from '../review/opened-submission.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { submissionOf } from '../submissions/submission-of.ts';
import { claimExpiry } from './claim-minutes.ts';

/**
 * Takes a waiting submission, or renews one's own claim. Of many at once exactly one wins.
 * @throws ProblemError not-found, already-claimed, already-answered, wrong-state
 */
export const claimSubmission = async ({
  ctx,
  input,
}: Call<'claimSubmission'>): Promise<Reply<'claimSubmission'>> => {
  const { membershipId } = requireStaff(ctx);
  const { academyId, requestId, tx } = ctx;
  const { db, clock } = ctx.resources;
  const now = clock.now();
  const claim = {
    academyId,
    submissionId: input.id,
    membershipId,
    now,
    expiresAt: claimExpiry(now),
    requestId,
  };
  const outcome = await claimSubmissionRow(db, claim, tx);
  if (outcome !== 'claimed' && outcome !== 'renewed') throw new ProblemError(outcome);
  if (tx !== undefined) return submissionOf(await findSubmission(tx, ctx, input.id), now);
  const opened = await readOpenSubmission(db, { academyId, submissionId: input.id });
  if (opened === null) throw new ProblemError('not-found');
  return openedSubmission(opened, now);
};
