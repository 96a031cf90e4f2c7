import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { learnedNow } from './learned-now.ts';
import { learningOf } from './learning-of.ts';

/**
 * Begins anew: nothing chosen up to now counts any more, and the rates are the library's again. The diagnoses stay as they
 * were stored, with the rates they were computed with.
 */
export const resetLearning = async ({ ctx }: Call<'resetLearning'>): Promise<Reply<'resetLearning'>> => {
  requireManager(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const before = learningOf(await learnedNow(tx, ctx));
    // What was chosen in this very millisecond belongs to before.
    const from = new Date(ctx.resources.clock.now().getTime() + 1);
    await tx.academy.update({ where: { id: academyId }, data: { learningResetAt: from } });
    await audit(tx, ctx, {
      action: 'reset-learning',
      subject: `academy:${academyId}`,
      detail: { blind: before.blind, overruled: before.overruled },
    });
    return learningOf(await learnedNow(tx, ctx));
  });
};
