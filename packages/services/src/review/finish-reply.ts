import { Plan } from '@ballfirst/contracts/http/review';
import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { unclaimed } from '../inbox/require-claim.ts';
import { emit } from '../outbox.ts';
import { buildProgramme } from '../practice/build-programme.ts';
import { builtFor } from '../practice/built-for.ts';
import { openProgramme } from '../practice/open-programme.ts';
import type { SubmissionRow } from '../rows.ts';
import { lockSubmission } from '../submissions/lock-submission.ts';

/** A pain told meanwhile may rule the drill out: in words, or null. */
const whyNotNow = (plan: unknown, row: SubmissionRow): string | null => {
  try {
    buildProgramme(Plan.parse(plan), builtFor(row.student));
    return null;
  } catch (error) {
    if (error instanceof ProblemError) return error.message;
    throw error;
  }
};

/**
 * Makes a reply final whose half minute is over: the swing is answered, its plan becomes the programme; letter and
 * check-in follow from the event. A swing that was withdrawn meanwhile takes no reply, nor does a
 * drill go out that no longer fits: it stays a draft.
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
    const keep = async (why: { readonly swing: string } | { readonly drill: string }) => {
      await tx.reply.update({ where: key, data: { status: 'draft', sendsAt: null } });
      await audit(tx, ctx, { action: 'keep-reply', subject: `reply:${reply.id}`, detail: why });
      return { sent: false };
    };
    if (row.status !== 'waiting') return keep({ swing: row.status });
    const { cause, plan } = reply;
    const why = plan === null ? null : whyNotNow(plan, row);
    if (why !== null) return keep({ drill: why });
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
