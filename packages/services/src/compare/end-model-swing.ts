import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { findClip } from '../clips/find-clip.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';

/** Takes a clip out of the collection; doing it twice is no error. @throws ProblemError not-found */
export const endModelSwing = async ({
  ctx,
  input,
}: Call<'endModelSwing'>): Promise<Reply<'endModelSwing'>> => {
  requireManager(ctx);
  const { academyId } = ctx;
  return inTransaction(ctx, async (tx) => {
    const clip = await findClip(tx, ctx, input.id);
    const all = { academyId, clipId: clip.id };
    if ((await tx.modelSwing.count({ where: all })) === 0) throw new ProblemError('not-found');
    const { count } = await tx.modelSwing.updateMany({
      where: { ...all, endedAt: null },
      data: { endedAt: ctx.resources.clock.now() },
    });
    if (count > 0) await audit(tx, ctx, { action: 'end-model-swing', subject: `clip:${clip.id}` });
    return null;
  });
};
