import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSentReply } from './find-sent-reply.ts';

/** The student says to have read the reply. The first time stands; saying it again is no error. @throws ProblemError not-found */
export const sayReplyRead = async ({ ctx, input }: Call<'sayReplyRead'>): Promise<Reply<'sayReplyRead'>> => {
  requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findSentReply(tx, ctx, input.id);
    const key = { academyId: ctx.academyId, id: row.id };
    const now = ctx.resources.clock.now();
    // Who says to have read it has opened it, though that request may have been lost.
    await tx.reply.updateMany({ where: { ...key, readAt: null }, data: { readAt: now } });
    const { count } = await tx.reply.updateMany({
      where: { ...key, saidReadAt: null },
      data: { saidReadAt: now },
    });
    if (count === 1) await audit(tx, ctx, { action: 'say-reply-read', subject: `reply:${row.id}` });
    const { saidReadAt } = await tx.reply.findUniqueOrThrow({ where: { academyId_id: key } });
    return { saidReadAt: (saidReadAt ?? now).toISOString() };
  });
};
