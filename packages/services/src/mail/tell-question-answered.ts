import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { questionAnsweredLetter } from './letters/question-answered.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/** Tells a student that the question was answered (event question.answered); the words stay on the page. @throws ProblemError not-found */
export const tellQuestionAnswered = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; questionId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const question = await inTransaction(ctx, (tx) =>
    tx.question.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: input.questionId } },
      include: { by: true },
    }),
  );
  if (question === null) throw new ProblemError('not-found');
  const reader = await studentToWriteTo(ctx, question.studentId);
  if (reader === null) return toldNobody;
  const { academy, membership } = reader.student;
  const letter = questionAnsweredLetter({
    name: membership.name,
    coachName: question.by.name,
    academyName: academy.name,
    url: `${ctx.resources.publicUrl}/replies/${question.replyId}#thread`,
    hand: reader.hand,
  });
  return sendToStudent(ctx, { eventId: input.eventId, kind: 'question-answered', reader, letter });
};
