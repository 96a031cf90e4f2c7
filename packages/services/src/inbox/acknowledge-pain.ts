import { ProblemError } from '@ballfirst/contracts/problems';
import { Pain, Tally } from '@ballfirst/contracts/words';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSubmission, lockSubmission } from '../submissions/lock-submission.ts';
import { placeSwing } from '../submissions/place-swing.ts';
import { submissionOf } from '../submissions/submission-of.ts';

/**
 * Says that a pain report was read: the row leaves the pinned ones for its place by its answer-by. Practice stays held.
 * Said again, nothing changes.
 * @throws ProblemError not-found, wrong-state where no pain was reported
 */
export const acknowledgePain = async ({
  ctx,
  input,
}: Call<'acknowledgePain'>): Promise<Reply<'acknowledgePain'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const row = await lockSubmission(tx, ctx, input.id);
    if (row.pain === 'none') throw new ProblemError('wrong-state', 'No pain was reported with this swing.');
    if (row.painSeenAt !== null) return submissionOf(row, now);
    const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
    const place = await placeSwing(tx, ctx, row.studentId, {
      submissionId: row.id,
      tally: Tally.parse(row.tally),
      pain: Pain.parse(row.pain),
      painAcknowledged: true,
      from: row.sentAt,
      academy,
      trialEnd: row.student.standing === 'trial' ? row.student.trialEndsAt : null,
      firstSwing: false,
      checkIn: row.checkInId !== null,
    });
    await tx.submission.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: { painSeenAt: now, priorityKey: place.priorityKey, version: { increment: 1 } },
    });
    await audit(tx, ctx, { action: 'acknowledge-pain', subject: `submission:${row.id}` });
    await emit(tx, ctx, 'submission.pain-seen', { submissionId: row.id });
    return submissionOf(await findSubmission(tx, ctx, row.id), now);
  });
};
