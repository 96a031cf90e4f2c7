import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { welcomeLetter } from './letters/welcome.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/** Welcomes a student who has joined (event student.joined). @throws ProblemError not-found */
export const tellWelcome = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; studentId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const reader = await studentToWriteTo(ctx, input.studentId);
  if (reader === null) return toldNobody;
  const { academy, ageGroup, membership } = reader.student;
  const letter = welcomeLetter({
    name: membership.name,
    academyName: academy.name,
    publicUrl: ctx.resources.publicUrl,
    trialDays: academy.trialDays,
    trialStarts: academy.trialStarts === 'first-swing' ? 'first-swing' : 'joining',
    promiseHours: academy.promiseHours,
    safeguardContact: ageGroup === 'junior' ? academy.safeguardContact : null,
  });
  return sendToStudent(ctx, { eventId: input.eventId, kind: 'welcome', reader, letter });
};
