import { localDate } from '@ballfirst/calendar/local-date';
import { weekOf } from '@ballfirst/calendar/week-of';
import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { rollUpWeek } from './roll-up-week.ts';

/**
 * Counts the week of a swing from scratch once its tally was put right (event submission.corrected); safe to run twice.
 * @throws ProblemError not-found
 */
export const rollUpCorrected = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { submissionId: string };
}): Promise<void> => {
  requireSystem(ctx);
  await inTransaction(ctx, async (tx) => {
    const row = await tx.submission.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: input.submissionId } },
      include: { student: { include: { membership: true } } },
    });
    if (row === null) throw new ProblemError('not-found');
    const week = weekOf(localDate(row.sentAt, row.student.membership.zone));
    await rollUpWeek({ ctx: { ...ctx, tx }, input: { studentId: row.studentId, week } });
  });
};
