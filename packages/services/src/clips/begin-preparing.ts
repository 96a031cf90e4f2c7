import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { originalKey } from './keys.ts';
import { lockClip } from './lock-clip.ts';

export type Preparing = {
  /** Whoever began later holds the higher number; only the highest may report or finish. */
  readonly fence: number;
  readonly originalKey: string;
  readonly lengthBytes: number;
  readonly view: string;
};

/** First of three steps: takes a clip for preparing. Null when there is nothing to prepare (any more). */
export const beginPreparing = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string };
}): Promise<Preparing | null> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await lockClip(tx, ctx, input.clipId);
    if (row.status !== 'uploaded' && row.status !== 'preparing') return null;
    const fence = row.fence + 1;
    await tx.clip.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: { status: 'preparing', fence, percent: 0, startedAt: ctx.resources.clock.now() },
    });
    return {
      fence,
      originalKey: originalKey({ academyId, clipId: row.id }),
      lengthBytes: Number(row.lengthBytes),
      view: row.view,
    };
  });
};
