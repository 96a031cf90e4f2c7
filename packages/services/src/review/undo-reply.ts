import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import type { Call, Reply } from '../operation-types.ts';
import { replyDraftOf } from './reply-draft-of.ts';

/**
 * Takes a reply back that is on its way: it is a draft again, and nobody has seen it. Again is no error.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered when it has gone out
 */
export const undoReply = async ({ ctx, input }: Call<'undoReply'>): Promise<Reply<'undoReply'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await requireClaim(tx, ctx, input.id);
    const key = { academyId_submissionId: { academyId, submissionId: row.id } };
    const reply = await tx.reply.findUnique({ where: key });
    if (reply === null) throw new ProblemError('not-found');
    if (reply.status !== 'sending') return replyDraftOf(reply);
    const draft = await tx.reply.update({
      where: key,
      data: {
        status: 'draft',
        sendsAt: null,
        updatedAt: ctx.resources.clock.now(),
        version: { increment: 1 },
      },
    });
    await audit(tx, ctx, { action: 'undo-reply', subject: `reply:${draft.id}` });
    return replyDraftOf(draft);
  });
};
