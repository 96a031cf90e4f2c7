import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import type { Context } from '../context.ts';
import { measureAgain } from '../review/measure-again.ts';
import { submissionInclude } from '../rows.ts';
import { lockStudent } from '../students/lock-student.ts';

/** Puts a student's hand right and reads with it every swing that is not answered yet. Answered ones stay as they were told. */
export const correctHand = async (
  tx: Tx,
  ctx: Context,
  studentId: string,
  hand: 'right' | 'left',
): Promise<void> => {
  const { academyId } = ctx;
  await lockStudent(tx, ctx, studentId);
  await tx.student.update({ where: { academyId_id: { academyId, id: studentId } }, data: { hand } });
  const rows = await tx.submission.findMany({
    where: { academyId, studentId, status: { in: ['preparing', 'needs-clip', 'waiting', 'film-again'] } },
    include: submissionInclude,
  });
  for (const row of rows) await measureAgain(tx, ctx, row);
  await audit(tx, ctx, { action: 'correct-hand', subject: `student:${studentId}`, detail: { hand } });
};
