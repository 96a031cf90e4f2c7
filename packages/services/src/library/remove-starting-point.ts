import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { keptItem, removeItem } from './library-items.ts';

/** Takes a starting point out of the list; the reply it came from stays. @throws ProblemError not-found */
export const removeStartingPoint = async ({
  ctx,
  input,
}: Call<'removeStartingPoint'>): Promise<Reply<'removeStartingPoint'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await keptItem(tx, ctx, 'starting-point', input.id);
    if (row === null) throw new ProblemError('not-found');
    await removeItem(tx, ctx, row);
    await audit(tx, ctx, { action: 'remove-starting-point', subject: `starting-point:${row.key}` });
    return null;
  });
};
