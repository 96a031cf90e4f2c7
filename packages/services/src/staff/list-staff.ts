import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { invitationOf } from './invitation-of.ts';
import { staffRoleOf } from './staff-role-of.ts';

/** Coaches and managers by name, and the invitations that are still open, newest first. */
export const listStaff = async ({ ctx }: Call<'listStaff'>): Promise<Reply<'listStaff'>> => {
  requireManager(ctx);
  const { academyId } = ctx;
  const now = ctx.resources.clock.now();
  return inTransaction(ctx, async (tx) => {
    const members = await tx.membership.findMany({
      where: { academyId, role: { in: ['coach', 'manager'] }, endedAt: null },
      orderBy: [{ name: 'asc' }, { id: 'asc' }],
    });
    const open = await tx.invitation.findMany({
      where: { academyId, acceptedAt: null, revokedAt: null },
      include: { by: true },
      orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
    });
    return {
      members: members.map((it) => ({
        id: it.id,
        name: it.name,
        email: it.email,
        role: staffRoleOf(it.role),
        since: it.createdAt.toISOString(),
      })),
      invitations: open.map((it) => invitationOf(it, now)),
    };
  });
};
