import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { findSentReply } from '../practice/find-sent-reply.ts';
import { lockSubmission } from '../submissions/lock-submission.ts';
import { stillKey, stillsAtMost } from './still-key.ts';

/**
 * Says that the pictures of a version of a reply lie under their keys. Where a video was erased meanwhile they go again.
 * @returns done: false when another run was first, or the reply was corrected since
 */
export const finishStills = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { replyId: string; version: number; made: number };
}): Promise<{ done: boolean }> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const { replyId, version, made } = input;
  const { done, erased } = await inTransaction(ctx, async (tx) => {
    const { submissionId } = await findSentReply(tx, ctx, replyId);
    await lockSubmission(tx, ctx, submissionId);
    const row = await findSentReply(tx, ctx, replyId);
    const erased = row.submission.clips.some(({ status }) => status === 'erased');
    if (row.stillsVersion === version || row.version !== version) return { done: false, erased };
    await tx.reply.update({
      where: { academyId_id: { academyId, id: replyId } },
      data: { stillsVersion: version },
    });
    await audit(tx, ctx, { action: 'draw-reply', subject: `reply:${replyId}`, detail: { version, made } });
    return { done: true, erased };
  });
  if (erased) {
    for (let index = 0; index < stillsAtMost; index += 1) {
      await ctx.resources.blobs.remove(stillKey({ academyId, replyId }, index));
    }
  }
  return { done };
};
