import { ProblemError } from '@ballfirst/contracts/problems';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { lockStudent } from '../students/lock-student.ts';
import { endConsent } from './end-consent.ts';
import { latestConsent } from './guardian-state.ts';

/**
 * Records that a guardian withdrew by writing to the academy.
 * @throws ProblemError not-found, wrong-state where no consent was ever asked for
 */
export const recordWithdrawal = async ({
  ctx,
  input,
}: Call<'recordWithdrawal'>): Promise<Reply<'recordWithdrawal'>> => {
  requireManager(ctx);
  return inTransaction(ctx, async (tx) => {
    const student = await lockStudent(tx, ctx, input.id);
    const row = await latestConsent(tx, ctx, student.id);
    if (row === null) throw new ProblemError('wrong-state', 'There is no consent of a guardian to withdraw.');
    const ended = await endConsent(tx, ctx, row, 'letter');
    return { studentId: student.id, at: (ended.withdrawnAt ?? ctx.resources.clock.now()).toISOString() };
  });
};
