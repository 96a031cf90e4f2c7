import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { learnedNow } from './learned-now.ts';
import { learningOf } from './learning-of.ts';

/**
 * Switches learning on or off. Off: no order is held back, nothing is counted, and the library's rates hold; what was
 * counted is kept for when it is on again. On: swings sent from now on have their turn. Said again, nothing changes.
 */
export const setLearning = async ({ ctx, input }: Call<'setLearning'>): Promise<Reply<'setLearning'>> => {
  requireManager(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    await tx.$queryRaw`SELECT 1 FROM public.academy WHERE id = ${academyId}::uuid FOR UPDATE`;
    const { learningSince } = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
    if ((learningSince !== null) !== input.on) {
      const since = input.on ? ctx.resources.clock.now() : null;
      await tx.academy.update({ where: { id: academyId }, data: { learningSince: since } });
      await audit(tx, ctx, {
        action: 'set-learning',
        subject: `academy:${academyId}`,
        detail: { on: input.on },
      });
    }
    return learningOf(await learnedNow(tx, ctx));
  });
};
