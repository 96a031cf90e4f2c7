import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';

/** A student switches reminders on or off. What a coach writes and what was asked for still comes. */
export const chooseReminders = async ({
  ctx,
  input,
}: Call<'chooseReminders'>): Promise<Reply<'chooseReminders'>> => {
  const { studentId } = requireStudent(ctx);
  const { academyId } = ctx;
  return inTransaction(ctx, async (tx) => {
    await tx.student.update({
      where: { academyId_id: { academyId, id: studentId } },
      data: { nudgesOffAt: input.reminders ? null : ctx.resources.clock.now() },
    });
    await audit(tx, ctx, {
      action: 'choose-reminders',
      subject: `student:${studentId}`,
      detail: { reminders: input.reminders },
    });
    return { reminders: input.reminders };
  });
};
