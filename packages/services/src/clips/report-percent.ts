import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';

/** How far preparing is, 0..100. `current: false`: somebody began again, stop working. */
export const reportPercent = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string; fence: number; percent: number };
}): Promise<{ current: boolean }> => {
  requireSystem(ctx);
  const { clipId, fence } = input;
  const percent = Math.round(Math.min(99, Math.max(0, input.percent)));
  const { count } = await inTransaction(ctx, (tx) =>
    tx.clip.updateMany({
      where: { academyId: ctx.academyId, id: clipId, fence, status: 'preparing' },
      data: { percent },
    }),
  );
  return { current: count === 1 };
};
