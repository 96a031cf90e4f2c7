import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';

/**
 * Ends the membership of a coach or manager: the next request of theirs finds the door shut, their claims are free again.
 * @throws ProblemError not-found, last-manager
 */
export const endStaff = async ({ ctx, input }: Call<'endStaff'>): Promise<Reply<'endStaff'>> => {
  requireManager(ctx);
  const { academyId } = ctx;
  const now = ctx.resources.clock.now();
  return inTransaction(ctx, async (tx) => {
    // Two managers who end one another at the same moment wait here, and the second is the last.
    const staff = await tx.$queryRaw<{ id: string; role: string }[]>`
      SELECT id, role FROM public.membership
      WHERE academy_id = ${academyId}::uuid AND role IN ('coach', 'manager') AND ended_at IS NULL
      ORDER BY id FOR UPDATE`;
    const found = staff.find(({ id }) => id === input.id);
    if (found === undefined) throw new ProblemError('not-found');
    const managers = staff.filter(({ role }) => role === 'manager');
    if (found.role === 'manager' && managers.length === 1) throw new ProblemError('last-manager');
    await tx.membership.update({
      where: { academyId_id: { academyId, id: input.id } },
      data: { endedAt: now },
    });
    await tx.submission.updateMany({
      where: { academyId, claimedBy: input.id, answeredAt: null },
      data: { claimedBy: null, claimedAt: null, claimExpiresAt: null },
    });
    await audit(tx, ctx, {
      action: 'end-staff',
      subject: `membership:${input.id}`,
      detail: { role: found.role },
    });
    return null;
  });
};
