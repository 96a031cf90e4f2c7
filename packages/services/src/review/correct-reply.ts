import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { findSentReply } from '../practice/find-sent-reply.ts';
import { lockSubmission } from '../submissions/lock-submission.ts';
import { replyDraftOf } from './reply-draft-of.ts';

/**
 * Corrects the words of a reply that has gone out. What it said before is kept and stays readable to the student, who is
 * told. Cause and drill are not corrected: another drill is another reply.
 * @throws ProblemError not-found, changed-meanwhile
 */
export const correctReply = async ({ ctx, input }: Call<'correctReply'>): Promise<Reply<'correctReply'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const { submissionId } = await findSentReply(tx, ctx, input.id);
    await lockSubmission(tx, ctx, submissionId);
    const reply = await findSentReply(tx, ctx, input.id);
    if (reply.version !== input.version) throw new ProblemError('changed-meanwhile');
    if (reply.words === input.words) return replyDraftOf(reply);
    await tx.replyVersion.create({
      data: {
        ...{ academyId, id: newId(), replyId: reply.id, words: reply.words },
        ...{ byMembership: reply.byMembership, at: reply.correctedAt ?? reply.sentAt },
      },
    });
    const corrected = await tx.reply.update({
      where: { academyId_id: { academyId, id: reply.id } },
      data: {
        ...{ words: input.words, correctedAt: now, updatedAt: now, byMembership: membershipId },
        version: { increment: 1 },
      },
    });
    await audit(tx, ctx, {
      action: 'correct-reply',
      subject: `reply:${reply.id}`,
      detail: { version: corrected.version },
    });
    await emit(tx, ctx, 'reply.corrected', { replyId: reply.id, version: corrected.version });
    return replyDraftOf(corrected);
  });
};
