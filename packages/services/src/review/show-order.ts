import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import type { Call, Reply } from '../operation-types.ts';

/**
 * Shows the order of causes that is held back, for a coach who cannot tell: nothing is learned from this swing but an
 * overruling. Asked again, nothing changes.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered
 */
export const showOrder = async ({ ctx, input }: Call<'showOrder'>): Promise<Reply<'showOrder'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const row = await requireClaim(tx, ctx, input.id);
    if (row.orderShownAt === null) {
      await tx.submission.update({
        where: { academyId_id: { academyId, id: row.id } },
        data: { orderShownAt: ctx.resources.clock.now() },
      });
      await audit(tx, ctx, { action: 'show-order', subject: `submission:${row.id}` });
    }
    return { heldBack: false };
  });
};
