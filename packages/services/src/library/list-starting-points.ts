import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { keptItems } from './library-items.ts';
import { startingPointOf } from './starting-point-of.ts';

/** The replies kept as starting points, newest first. */
export const listStartingPoints = async ({
  ctx,
}: Pick<Call<'listStartingPoints'>, 'ctx'>): Promise<Reply<'listStartingPoints'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => ({
    items: (await keptItems(tx, ctx, 'starting-point')).map(startingPointOf),
  }));
};
