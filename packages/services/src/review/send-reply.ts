import { Plan } from '@ballfirst/contracts/http/review';
import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { buildProgramme } from '../practice/build-programme.ts';
import { builtFor } from '../practice/built-for.ts';
import { replyDraftOf } from './reply-draft-of.ts';

/** How long a coach may take a reply back; nobody sees it before. */
export const secondThoughtsMs = 30_000;

/**
 * Sends the reply on its way: for half a minute it can be taken back (`undoReply`), then the worker makes it final
 * (`finishReply`): the swing is answered, the plan becomes the programme, the student gets a letter.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, wrong-state, bad-request when the drill does not fit
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
    if (draft.plan !== null && draft.cause === null) {
      throw new ProblemError(
        'wrong-state',
        'Choose the cause that the drill is for before you send the reply.',
      );
    }
    if (draft.status === 'sending') return replyDraftOf(draft);
    // Said to the coach now: once it is on its way nobody is there to hear that the drill does not fit.
    if (draft.plan !== null) buildProgramme(Plan.parse(draft.plan), builtFor(row.student));
    const sending = await tx.reply.update({
      where: key,
      data: {
        status: 'sending',
        sendsAt: new Date(now.getTime() + secondThoughtsMs),
        updatedAt: now,
        byMembership: membershipId,
        version: { increment: 1 },
      },
    });
    await audit(tx, ctx, {
      action: 'send-reply',
      subject: `reply:${sending.id}`,
      detail: { submissionId: row.id, cause: draft.cause },
    });
    return replyDraftOf(sending);
  });
};
