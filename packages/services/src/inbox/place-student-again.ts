import { Tally } from '@ballfirst/contracts/words';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { placeAgain } from '../submissions/place-again.ts';

/**
 * Places the waiting swings of a student anew when the standing changed (event standing.changed): a trial that is over,
 * or begins, no longer or now brings a swing forward. Safe to run twice: the place follows from what is stored.
 * @returns how many were placed
 */
export const placeStudentAgain = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { studentId: string };
}): Promise<{ placed: number }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const waiting = await tx.$queryRaw<{ id: string }[]>`SELECT id FROM public.submission
      WHERE academy_id = ${academyId}::uuid AND student_id = ${input.studentId}::uuid
        AND status IN ('waiting', 'preparing', 'needs-clip', 'film-again')
      ORDER BY id FOR NO KEY UPDATE`;
    for (const { id } of waiting) {
      const row = await findSubmission(tx, ctx, id);
      const { priorityKey, headStartHours, reasons } = await placeAgain(tx, ctx, row, Tally.parse(row.tally));
      await tx.submission.update({
        where: { academyId_id: { academyId, id } },
        data: { priorityKey, headStartHours, reasons },
      });
    }
    return { placed: waiting.length };
  });
};
