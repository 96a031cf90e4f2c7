import { Plan } from '@ballfirst/contracts/http/review';
import { ProblemError } from '@ballfirst/contracts/problems';
import { causeById } from '@ballfirst/library/causes';
import { drillById } from '@ballfirst/library/drills';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { replySentLetter } from './letters/reply-sent.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/** Tells a student that the swing has been answered (event reply.sent). @throws ProblemError not-found */
export const tellReplySent = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; replyId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const reply = await inTransaction(ctx, (tx) =>
    tx.reply.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: input.replyId } },
      include: { submission: true, author: true },
    }),
  );
  if (reply === null) throw new ProblemError('not-found');
  if (reply.status !== 'sent') return toldNobody;
  const reader = await studentToWriteTo(ctx, reply.submission.studentId);
  if (reader === null) return toldNobody;
  const drill = reply.plan === null ? null : drillById(Plan.parse(reply.plan).drillId);
  const letter = replySentLetter({
    name: reader.student.membership.name,
    coachName: reply.author.name,
    academyName: reader.student.academy.name,
    publicUrl: ctx.resources.publicUrl,
    replyId: reply.id,
    hand: reader.hand,
    sentence: reply.cause === null ? null : wordsForHand(causeById(reply.cause).forStudent, reader.hand),
    drill,
  });
  return sendToStudent(ctx, { eventId: input.eventId, kind: 'reply-sent', reader, letter });
};
