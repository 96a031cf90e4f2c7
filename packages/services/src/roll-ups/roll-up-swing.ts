import { weekOf } from '@ballfirst/calendar/week-of';
import { ProblemError } from '@ballfirst/contracts/problems';
import { addSwing } from '@ballfirst/progress/add-to-week';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { onceEffect } from '../effects/once-effect.ts';
import { inTransaction } from '../in-transaction.ts';
import { countedSwing } from './counted.ts';
import { keepWeek, lockWeek } from './lock-week.ts';
import { sentSwing } from './week-items.ts';

/**
 * Adds a swing and its tally to its student's week (event submission.sent), once for the submission.
 * @returns added: false when the week had counted it
 * @throws ProblemError not-found
 */
export const rollUpSwing = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { submissionId: string };
}): Promise<{ added: boolean }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await tx.submission.findUnique({
      where: { academyId_id: { academyId, id: input.submissionId } },
      include: { student: { include: { membership: true } } },
    });
    if (row === null) throw new ProblemError('not-found');
    const swing = sentSwing(row, row.student.membership.zone);
    const week = await lockWeek(tx, ctx, row.studentId, weekOf(swing.localDate));
    const added = await onceEffect({ ...ctx, tx }, { eventId: row.id, name: countedSwing }, async () => {
      await keepWeek(tx, ctx, addSwing(week, swing));
      return true;
    });
    return { added: added ?? false };
  });
};
