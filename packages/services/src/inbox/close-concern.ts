import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { changeConcern, concernOf, holderOf, lockConcern } from './concern-of.ts';
import { unclaimed } from './require-claim.ts';

/**
 * Says what was done about a concern; it leaves the inbox. Said again, the first answer stands. Practice that is held
 * stays so: that a report was read does not make anybody well.
 * @throws ProblemError not-found, already-claimed when another coach holds it
 */
export const closeConcern = async ({ ctx, input }: Call<'closeConcern'>): Promise<Reply<'closeConcern'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const now = ctx.resources.clock.now();
    const row = await lockConcern(tx, ctx, input.id);
    if (row.status !== 'waiting') return concernOf(row, now);
    const holder = holderOf(row, now);
    if (holder !== null && holder.id !== membershipId) throw new ProblemError('already-claimed');
    const closed = await changeConcern(tx, row, {
      ...unclaimed,
      status: 'closed',
      closedAt: now,
      closedBy: membershipId,
      outcome: input.outcome,
    });
    await audit(tx, ctx, {
      action: 'close-concern',
      subject: `concern:${row.id}`,
      detail: { outcome: input.outcome },
    });
    await emit(tx, ctx, 'concern.closed', { concernId: row.id });
    return concernOf(closed, now);
  });
};
