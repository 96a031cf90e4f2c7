import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { replyCorrectedLetter } from './letters/reply-corrected.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/**
 * Tells a student that a reply was corrected (event reply.corrected). Of several corrections in a row, the last one tells.
 * @throws ProblemError not-found
 */
export const tellReplyCorrected = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; replyId: string; version: number };
}): Promise<Told> => {
  requireSystem(ctx);
  const reply = await inTransaction(ctx, (tx) =>
    tx.reply.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: input.replyId } },
      include: { author: true, submission: true },
    }),
  );
  if (reply === null) throw new ProblemError('not-found');
  if (reply.version !== input.version) return toldNobody;
  const reader = await studentToWriteTo(ctx, reply.submission.studentId);
  if (reader === null) return toldNobody;
  const programme = await inTransaction(ctx, (tx) =>
    tx.programme.findFirst({ where: { academyId: ctx.academyId, id: reply.programmeId ?? reply.id } }),
  );
  const { academy, membership } = reader.student;
  const letter = replyCorrectedLetter({
    name: membership.name,
    coachName: reply.author.name,
    academyName: academy.name,
    url: `${ctx.resources.publicUrl}/replies/${reply.id}`,
    drillId: programme?.drillId ?? null,
    hand: reader.hand,
  });
  return sendToStudent(ctx, { eventId: input.eventId, kind: 'reply-corrected', reader, letter });
};
