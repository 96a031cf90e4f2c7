import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { claimExpiry } from './claim-minutes.ts';
import { changeConcern, concernOf, holderOf, lockConcern } from './concern-of.ts';

/**
 * Takes a concern, or renews one's own claim on it. Of many at once exactly one wins.
 * @throws ProblemError not-found, already-claimed, wrong-state
 */
export const claimConcern = async ({ ctx, input }: Call<'claimConcern'>): Promise<Reply<'claimConcern'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const now = ctx.resources.clock.now();
    const row = await lockConcern(tx, ctx, input.id);
    if (row.status !== 'waiting') throw new ProblemError('wrong-state');
    const holder = holderOf(row, now);
    if (holder !== null && holder.id !== membershipId) {
      throw new ProblemError('already-claimed', 'Another coach has this. Choose the next one.');
    }
    const claimExpiresAt = claimExpiry(now);
    if (holder !== null) return concernOf(await changeConcern(tx, row, { claimExpiresAt }), now);
    const claimed = await changeConcern(tx, row, {
      claimedBy: membershipId,
      claimedAt: now,
      claimExpiresAt,
      handedBy: null,
      handedWhy: null,
    });
    await audit(tx, ctx, { action: 'claim-concern', subject: `concern:${row.id}` });
    await emit(tx, ctx, 'concern.claimed', { concernId: row.id });
    return concernOf(claimed, now);
  });
};
