import { ProblemError } from '@ballfirst/contracts/problems';
import { drillById } from '@ballfirst/library/drills';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { checkInDueLetter } from './letters/check-in-due.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/**
 * Asks a student for the check-in that has come due (event check-in.due). One that was answered meanwhile, or whose
 * programme does not run any more, asks for nothing.
 * @throws ProblemError not-found
 */
export const tellCheckInDue = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; checkInId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const checkIn = await inTransaction(ctx, (tx) =>
    tx.checkIn.findUnique({
      where: { academyId_id: { academyId, id: input.checkInId } },
      include: { programme: true },
    }),
  );
  if (checkIn === null) throw new ProblemError('not-found');
  if (checkIn.status !== 'sent' || checkIn.programme.status !== 'open') return toldNobody;
  const reader = await studentToWriteTo(ctx, checkIn.studentId);
  if (reader === null) return toldNobody;
  const letter = checkInDueLetter({
    name: reader.student.membership.name,
    academyName: reader.student.academy.name,
    publicUrl: ctx.resources.publicUrl,
    checkInId: checkIn.id,
    asks: checkIn.asks === 'practice' ? 'practice' : 'clip',
    drill: drillById(checkIn.programme.drillId),
    hand: reader.hand,
  });
  return sendToStudent(ctx, { eventId: input.eventId, kind: 'check-in-due', reader, letter });
};
