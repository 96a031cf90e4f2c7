import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import { refusalWords } from '../clips/refusal-words.ts';
import type { Context } from '../context.ts';
import { gripView } from '../grip-photo/grip-photo-of.ts';
import { inTransaction } from '../in-transaction.ts';
import { clipRefusedLetter } from './letters/clip-refused.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/** Tells a student why a clip cannot be used (event clip.prepared); one that is ready needs no letter. @throws ProblemError not-found */
export const tellClipRefused = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; clipId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const clip = await inTransaction(ctx, (tx) =>
    tx.clip.findUnique({ where: { academyId_id: { academyId, id: input.clipId } } }),
  );
  if (clip === null) throw new ProblemError('not-found');
  // A photo is an extra: the page of its swing says what is wrong with it, and no letter is written.
  if (clip.status !== 'refused' || clip.view === gripView) return toldNobody;
  const reader = await studentToWriteTo(ctx, clip.studentId);
  if (reader === null) return toldNobody;
  const letter = clipRefusedLetter({
    name: reader.student.membership.name,
    academyName: reader.student.academy.name,
    publicUrl: ctx.resources.publicUrl,
    submissionId: clip.submissionId,
    reason: refusalWords(clip.refusal ?? ''),
  });
  return sendToStudent(ctx, { eventId: input.eventId, kind: 'clip-refused', reader, letter });
};
