import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSentReply } from './find-sent-reply.ts';

/** The reply was opened; only the first time counts. Reminders go by it. @throws ProblemError not-found */
export const markReplyRead = async ({
  ctx,
  input,
}: Call<'markReplyRead'>): Promise<Reply<'markReplyRead'>> => {
  requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findSentReply(tx, ctx, input.id);
    const { count } = await tx.reply.updateMany({
      where: { academyId: ctx.academyId, id: row.id, readAt: null },
      data: { readAt: ctx.resources.clock.now() },
    });
    if (count === 1) await audit(tx, ctx, { action: 'mark-reply-read', subject: `reply:${row.id}` });
    return null;
  });
};
