import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { requireClaim, unclaimed } from '../inbox/require-claim.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { openProgramme } from '../practice/open-programme.ts';
import { replyDraftOf } from './reply-draft-of.ts';

/**
 * Sends the reply: the swing is answered, its plan becomes the programme; letter and check-in follow from the event.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, wrong-state, bad-request
 */
export const sendReply = async ({ ctx, input }: Call<'sendReply'>): Promise<Reply<'sendReply'>> => {
  const { membershipId } = requireStaff(ctx);
  return once(ctx, 'sendReply', async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const row = await requireClaim(tx, ctx, input.id);
    const key = { academyId_submissionId: { academyId, submissionId: row.id } };
    const draft = await tx.reply.findUnique({ where: key });
    if (draft === null || (draft.words.trim() === '' && draft.cause === null)) {
      throw new ProblemError('wrong-state', 'Write something, or choose a cause, before you send the reply.');
    }
    const { cause, plan } = draft;
    if (plan !== null && cause === null) {
      throw new ProblemError(
        'wrong-state',
        'Choose the cause that the drill is for before you send the reply.',
      );
    }
    const programmeId =
      plan === null || cause === null ? null : await openProgramme(tx, ctx, row, { cause, plan });
    const sent = await tx.reply.update({
      where: key,
      data: {
        status: 'sent',
        sentAt: now,
        updatedAt: now,
        programmeId,
        byMembership: membershipId,
        version: { increment: 1 },
      },
    });
    await tx.submission.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: { status: 'answered', answeredAt: now, ...unclaimed, version: { increment: 1 } },
    });
    await audit(tx, ctx, {
      action: 'send-reply',
      subject: `reply:${sent.id}`,
      detail: { submissionId: row.id, cause, programmeId },
    });
    await emit(tx, ctx, 'reply.sent', { replyId: sent.id });
    return replyDraftOf(sent);
  });
};
