import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

/** A fresh swing answers one of the student's own check-ins. @throws ProblemError not-found */
export const answerCheckIn = async (
  tx: Tx,
  ctx: Context,
  studentId: string,
  checkInId: string,
): Promise<void> => {
  const { count } = await tx.checkIn.updateMany({
    where: { academyId: ctx.academyId, id: checkInId, studentId, status: { in: ['scheduled', 'sent'] } },
    data: { status: 'done' },
  });
  if (count === 0)
    throw new ProblemError('not-found', 'This check-in is not open any more. Send it as a new swing.');
};
