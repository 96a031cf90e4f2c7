import { audit } from '../audit.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { submissionOf } from '../submissions/submission-of.ts';
import { requireClaim, unclaimed } from './require-claim.ts';

/**
 * Asks for a better clip, with a reason; the coach who claimed it asks.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, wrong-state
 */
export const askToFilmAgain = async ({
  ctx,
  input,
}: Call<'askToFilmAgain'>): Promise<Reply<'askToFilmAgain'>> =>
  inTransaction(ctx, async (tx) => {
    const row = await requireClaim(tx, ctx, input.id);
    await tx.submission.update({
      where: { academyId_id: { academyId: ctx.academyId, id: row.id } },
      data: { status: 'film-again', ...unclaimed, version: { increment: 1 } },
    });
    // The reason stands with the clips: that is where the student puts it right.
    await tx.clip.updateMany({
      where: { academyId: ctx.academyId, submissionId: row.id },
      data: { refusal: input.reason },
    });
    await audit(tx, ctx, {
      action: 'ask-to-film-again',
      subject: `submission:${row.id}`,
      detail: { reason: input.reason },
    });
    await emit(tx, ctx, 'submission.film-again', { submissionId: row.id });
    return submissionOf(await findSubmission(tx, ctx, row.id), ctx.resources.clock.now());
  });
