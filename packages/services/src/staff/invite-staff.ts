import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { invitationOf } from './invitation-of.ts';

export const invitationDays = 7;

/**
 * Invites somebody to the staff: the worker sends the link. Inviting an address again takes the earlier invitation back.
 * @throws ProblemError not-allowed, already-a-member
 */
export const inviteStaff = async ({ ctx, input }: Call<'inviteStaff'>): Promise<Reply<'inviteStaff'>> => {
  const actor = requireManager(ctx);
  const { academyId } = ctx;
  const now = ctx.resources.clock.now();
  return once(ctx, 'inviteStaff', async (tx) => {
    const member = await tx.membership.findFirst({
      where: { academyId, email: input.email, endedAt: null },
      select: { id: true },
    });
    if (member !== null) {
      throw new ProblemError(
        'already-a-member',
        'Somebody with this address is a member of the academy already.',
      );
    }
    await tx.invitation.updateMany({
      where: { academyId, email: input.email, acceptedAt: null, revokedAt: null },
      data: { revokedAt: now },
    });
    const id = newId();
    const expiresAt = new Date(now.getTime() + invitationDays * 86_400_000);
    const row = await tx.invitation.create({
      data: { academyId, id, ...input, byMembership: actor.membershipId, createdAt: now, expiresAt },
      include: { by: true },
    });
    await audit(tx, ctx, {
      action: 'invite-staff',
      subject: `invitation:${id}`,
      detail: { role: input.role },
    });
    await emit(tx, ctx, 'invitation.made', { invitationId: id });
    return invitationOf(row, now);
  });
};
