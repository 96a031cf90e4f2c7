import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { rulesOf } from './reminder-rules.ts';

/** Which reminders the academy sends. */
export const readReminderRules = async ({
  ctx,
}: Call<'readReminderRules'>): Promise<Reply<'readReminderRules'>> => {
  requireManager(ctx);
  const academy = await inTransaction(ctx, (tx) =>
    tx.academy.findUniqueOrThrow({ where: { id: ctx.academyId } }),
  );
  return rulesOf(academy.nudgesOff);
};
