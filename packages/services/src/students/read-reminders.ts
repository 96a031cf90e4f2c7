import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';

/** Whether reminders are on for the student who asks. */
export const readReminders = async ({ ctx }: Call<'readReminders'>): Promise<Reply<'readReminders'>> => {
  const { studentId } = requireStudent(ctx);
  const { academyId } = ctx;
  const { nudgesOffAt } = await inTransaction(ctx, (tx) =>
    tx.student.findUniqueOrThrow({ where: { academyId_id: { academyId, id: studentId } } }),
  );
  return { reminders: nudgesOffAt === null };
};
