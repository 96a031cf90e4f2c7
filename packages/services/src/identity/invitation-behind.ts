import { ProblemError } from '@ballfirst/contracts/problems';
import { invitationOfLink } from '@ballfirst/db/crossings/invitation-of-link';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context, Resources } from '../context.ts';
import { tokenHash } from './session.ts';

/** Where the link of an invitation leads: the academy, acted in by the system, and the invitation's id. */
export const invitationBehind = async (
  resources: Resources,
  token: string,
  requestId: string,
): Promise<{ ctx: Context; invitationId: string }> => {
  const now = resources.clock.now();
  const found = await invitationOfLink(resources.db, { tokenHash: tokenHash(token), now });
  if (found === null) throw new ProblemError('link-used-up');
  const actor = { kind: 'system', job: 'invitation' } as const;
  return {
    ctx: { academyId: found.academyId, actor, resources, requestId },
    invitationId: found.invitationId,
  };
};

/** An invitation that can still be accepted, with its academy. @throws ProblemError link-used-up */
export const openInvitation = async (tx: Tx, ctx: Context, id: string) => {
  const invitation = await tx.invitation.findUnique({
    where: { academyId_id: { academyId: ctx.academyId, id } },
    include: { academy: true },
  });
  const now = ctx.resources.clock.now();
  const open =
    invitation !== null &&
    invitation.acceptedAt === null &&
    invitation.revokedAt === null &&
    invitation.expiresAt > now;
  if (!open) throw new ProblemError('link-used-up');
  return invitation;
};
