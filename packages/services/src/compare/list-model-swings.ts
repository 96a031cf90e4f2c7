import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { modelSwingInclude, modelSwingOf } from './model-swing-of.ts';

/** The academy's own collection, by name. */
export const listModelSwings = async ({
  ctx,
}: Call<'listModelSwings'>): Promise<Reply<'listModelSwings'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const rows = await tx.modelSwing.findMany({
      where: { academyId: ctx.academyId, endedAt: null },
      include: modelSwingInclude,
      orderBy: [{ name: 'asc' }, { id: 'asc' }],
    });
    return { items: rows.map(modelSwingOf).filter((one) => one !== null) };
  });
};
