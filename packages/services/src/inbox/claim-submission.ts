import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSubmission, lockSubmission } from '../submissions/lock-submission.ts';
import { claimOf, submissionOf } from '../submissions/submission-of.ts';
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
  return inTransaction(ctx, async (tx) => {
    const now = ctx.resources.clock.now();
    const row = await lockSubmission(tx, ctx, input.id);
    if (row.status === 'answered') throw new ProblemError('already-answered');
    if (row.status !== 'waiting') throw new ProblemError('wrong-state');
    const held = claimOf(row, now);
    if (held !== null && held.membershipId !== membershipId) throw new ProblemError('already-claimed');
    await tx.submission.update({
      where: { academyId_id: { academyId: ctx.academyId, id: row.id } },
      data: {
        claimedBy: membershipId,
        claimedAt: held === null ? now : row.claimedAt,
        claimExpiresAt: claimExpiry(now),
        ...(held === null ? { version: { increment: 1 } } : {}),
      },
    });
    if (held === null) {
      await audit(tx, ctx, { action: 'claim-submission', subject: `submission:${row.id}` });
      await emit(tx, ctx, 'submission.claimed', { submissionId: row.id });
    }
    return submissionOf(await findSubmission(tx, ctx, row.id), now);
  });
};
