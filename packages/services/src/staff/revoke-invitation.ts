import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';

/** Takes an invitation back; doing it twice is no error. @throws ProblemError not-found, wrong-state when accepted */
export const revokeInvitation = async ({
  ctx,
  input,
}: Call<'revokeInvitation'>): Promise<Reply<'revokeInvitation'>> => {
  requireManager(ctx);
  const where = { academyId: ctx.academyId, id: input.id };
  return inTransaction(ctx, async (tx) => {
    const { count } = await tx.invitation.updateMany({
      where: { ...where, acceptedAt: null, revokedAt: null },
      data: { revokedAt: ctx.resources.clock.now() },
    });
    if (count === 1) {
      await audit(tx, ctx, { action: 'revoke-invitation', subject: `invitation:${input.id}` });
      return null;
    }
    const row = await tx.invitation.findUnique({ where: { academyId_id: where } });
    if (row === null) throw new ProblemError('not-found');
    if (row.acceptedAt !== null) throw new ProblemError('wrong-state');
    return null;
  });
};
