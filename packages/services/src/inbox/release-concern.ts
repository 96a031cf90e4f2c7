import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { changeConcern, concernOf, holderOf, lockConcern } from './concern-of.ts';
import { unclaimed } from './require-claim.ts';

/**
 * Gives a concern back to the inbox; one that nobody holds stays as it is.
 * @throws ProblemError not-found, already-claimed when another coach holds it
 */
export const releaseConcern = async ({
  ctx,
  input,
}: Call<'releaseConcern'>): Promise<Reply<'releaseConcern'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const now = ctx.resources.clock.now();
    const row = await lockConcern(tx, ctx, input.id);
    const holder = holderOf(row, now);
    if (holder !== null && holder.id !== membershipId) throw new ProblemError('already-claimed');
    if (row.claimedBy === null) return concernOf(row, now);
    const released = await changeConcern(tx, row, unclaimed);
    await audit(tx, ctx, { action: 'release-concern', subject: `concern:${row.id}` });
    await emit(tx, ctx, 'concern.released', { concernId: row.id });
    return concernOf(released, now);
  });
};
