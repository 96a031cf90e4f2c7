import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { quietOf } from './quiet-of.ts';

/** Whether reminders are on for the student who asks, and the quiet hours. */
export const readReminders = async ({ ctx }: Call<'readReminders'>): Promise<Reply<'readReminders'>> => {
  const { studentId } = requireStudent(ctx);
  const { academyId } = ctx;
  const row = await inTransaction(ctx, (tx) =>
    tx.student.findUniqueOrThrow({ where: { academyId_id: { academyId, id: studentId } } }),
  );
  return { reminders: row.nudgesOffAt === null, quiet: quietOf(row) };
};
