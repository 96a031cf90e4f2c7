import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { unclaimed } from '../inbox/require-claim.ts';
import { emit } from '../outbox.ts';
import { openProgramme } from '../practice/open-programme.ts';
import { lockSubmission } from '../submissions/lock-submission.ts';

/**
 * Makes a reply final whose half minute is over: the swing is answered, its plan becomes the programme; letter and
 * check-in follow from the event. A swing that was withdrawn meanwhile takes no reply: it stays a draft.
 * @returns sent: false when it was taken back, has gone out before, or is not due
 * @throws ProblemError not-found
 */
export const finishReply = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { replyId: string };
}): Promise<{ sent: boolean }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const key = { academyId_id: { academyId, id: input.replyId } };
    const found = await tx.reply.findUnique({ where: key, select: { submissionId: true } });
    if (found === null) throw new ProblemError('not-found');
    // The submission's lock orders this against the coach who takes the reply back.
    const row = await lockSubmission(tx, ctx, found.submissionId);
    const reply = await tx.reply.findUniqueOrThrow({ where: key });
    if (reply.status !== 'sending' || reply.sendsAt === null || reply.sendsAt > now) return { sent: false };
    if (row.status !== 'waiting') {
      await tx.reply.update({ where: key, data: { status: 'draft', sendsAt: null } });
      await audit(tx, ctx, {
        action: 'keep-reply',
        subject: `reply:${reply.id}`,
        detail: { swing: row.status },
      });
      return { sent: false };
    }
    const { cause, plan } = reply;
    const programmeId =
      plan === null || cause === null ? null : await openProgramme(tx, ctx, row, { cause, plan });
    await tx.reply.update({
      where: key,
      data: { status: 'sent', sentAt: now, sendsAt: null, updatedAt: now, programmeId },
    });
    await tx.submission.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: { status: 'answered', answeredAt: now, ...unclaimed, version: { increment: 1 } },
    });
    await audit(tx, ctx, {
      action: 'finish-reply',
      subject: `reply:${reply.id}`,
      detail: { submissionId: row.id, cause, programmeId },
    });
    await emit(tx, ctx, 'reply.sent', { replyId: reply.id });
    return { sent: true };
  });
};
