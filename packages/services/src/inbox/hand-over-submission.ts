import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { submissionOf } from '../submissions/submission-of.ts';
import { handedExpiry } from './claim-minutes.ts';
import { requireClaim } from './require-claim.ts';

/**
 * Gives one's claimed submission to another coach with a line of why, which stands in the row; the audit names the two
 * and not the words.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, wrong-state, bad-request
 */
export const handOverSubmission = async ({
  ctx,
  input,
}: Call<'handOverSubmission'>): Promise<Reply<'handOverSubmission'>> =>
  inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const row = await requireClaim(tx, ctx, input.id);
    const other = await tx.membership.findUnique({ where: { academyId_id: { academyId, id: input.to } } });
    if (other === null || other.role === 'student' || other.endedAt !== null || other.id === row.claimedBy) {
      throw new ProblemError('bad-request', undefined, [
        { path: 'to', message: 'Choose another coach of this academy.' },
      ]);
    }
    await tx.submission.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: {
        claimedBy: other.id,
        claimedAt: now,
        claimExpiresAt: handedExpiry(now),
        handedBy: row.claimedBy,
        handedWhy: input.why,
        version: { increment: 1 },
      },
    });
    await audit(tx, ctx, {
      action: 'hand-over-submission',
      subject: `submission:${row.id}`,
      detail: { to: other.id },
    });
    await emit(tx, ctx, 'submission.handed-over', { submissionId: row.id });
    return submissionOf(await findSubmission(tx, ctx, row.id), now);
  });
