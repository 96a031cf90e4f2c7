import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSubmission, lockSubmission } from '../submissions/lock-submission.ts';
import { claimOf, submissionOf } from '../submissions/submission-of.ts';
import { unclaimed } from './require-claim.ts';

/**
 * Gives a claimed submission back to the inbox; one that nobody holds stays as it is.
 * @throws ProblemError not-found, already-claimed when another coach holds it
 */
export const releaseSubmission = async ({
  ctx,
  input,
}: Call<'releaseSubmission'>): Promise<Reply<'releaseSubmission'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const now = ctx.resources.clock.now();
    const row = await lockSubmission(tx, ctx, input.id);
    const held = claimOf(row, now);
    if (held !== null && held.membershipId !== membershipId) throw new ProblemError('already-claimed');
    if (row.claimedBy !== null) {
      await tx.submission.update({
        where: { academyId_id: { academyId: ctx.academyId, id: row.id } },
        data: { ...unclaimed, version: { increment: 1 } },
      });
      await audit(tx, ctx, { action: 'release-submission', subject: `submission:${row.id}` });
      await emit(tx, ctx, 'submission.released', { submissionId: row.id });
    }
    return submissionOf(await findSubmission(tx, ctx, row.id), now);
  });
};
