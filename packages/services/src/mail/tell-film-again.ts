import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import { refusalWords } from '../clips/refusal-words.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { filmAgainLetter } from './letters/film-again.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/** Tells a student that the coach needs another clip (event submission.film-again). @throws ProblemError not-found */
export const tellFilmAgain = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; submissionId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const submission = await inTransaction(ctx, (tx) =>
    tx.submission.findUnique({
      where: { academyId_id: { academyId, id: input.submissionId } },
      include: { clips: { orderBy: { createdAt: 'desc' } } },
    }),
  );
  if (submission === null) throw new ProblemError('not-found');
  if (submission.status !== 'film-again') return toldNobody;
  const reader = await studentToWriteTo(ctx, submission.studentId);
  if (reader === null) return toldNobody;
  const letter = filmAgainLetter({
    name: reader.student.membership.name,
    academyName: reader.student.academy.name,
    publicUrl: ctx.resources.publicUrl,
    submissionId: submission.id,
    reason: refusalWords(submission.clips.find(({ refusal }) => refusal !== null)?.refusal ?? ''),
  });
  return sendToStudent(ctx, { eventId: input.eventId, kind: 'film-again', reader, letter });
};
