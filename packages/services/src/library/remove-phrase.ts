import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { keptItem, removeItem } from './library-items.ts';
import { KeptPhrase } from './phrase-of.ts';

/** Takes a phrase out: one's own, or one of the academy. Another coach's own is not there. @throws ProblemError not-found */
export const removePhrase = async ({ ctx, input }: Call<'removePhrase'>): Promise<Reply<'removePhrase'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await keptItem(tx, ctx, 'phrase', input.id);
    const owner = row === null ? null : KeptPhrase.parse(row.content).owner;
    if (row === null || (owner !== null && owner !== membershipId)) throw new ProblemError('not-found');
    await removeItem(tx, ctx, row);
    await audit(tx, ctx, { action: 'remove-phrase', subject: `phrase:${row.key}` });
    return null;
  });
};
