import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { quietOf } from './quiet-of.ts';

/**
 * A student switches reminders on or off and says when it is quiet: check-ins and reminders wait until then is over. What a
 * coach writes and what was asked for still comes at once.
 */
export const chooseReminders = async ({
  ctx,
  input,
}: Call<'chooseReminders'>): Promise<Reply<'chooseReminders'>> => {
  const { studentId } = requireStudent(ctx);
  const { academyId } = ctx;
  const { quiet } = input;
  return inTransaction(ctx, async (tx) => {
    const row = await tx.student.update({
      where: { academyId_id: { academyId, id: studentId } },
      data: {
        nudgesOffAt: input.reminders ? null : ctx.resources.clock.now(),
        ...(quiet === undefined ? {} : { quietFrom: quiet?.from ?? null, quietTo: quiet?.to ?? null }),
      },
    });
    await audit(tx, ctx, {
      action: 'choose-reminders',
      subject: `student:${studentId}`,
      detail: { reminders: input.reminders, quiet: row.quietFrom !== null },
    });
    return { reminders: input.reminders, quiet: quietOf(row) };
  });
};
