import { openLink } from '@ballfirst/db/crossings/open-link';
import { newId } from '@ballfirst/db/ids';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { newToken, tokenHash } from '../identity/session.ts';
import { inTransaction } from '../in-transaction.ts';
import { invitationDays } from '../staff/invite-staff.ts';
import { staffRoleOf } from '../staff/staff-role-of.ts';
import { invitationLetter } from './letters/invitation.ts';
import { sendLetter } from './send-letter.ts';
import { type Told, toldNobody } from './send-to-student.ts';

/** Sends an invitation with its link (event invitation.made); the copy that is kept has no link. */
export const tellInvitation = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; invitationId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const invitation = await inTransaction(ctx, (tx) =>
    tx.invitation.findUnique({
      where: { academyId_id: { academyId, id: input.invitationId } },
      include: { academy: true, by: true },
    }),
  );
  const now = resources.clock.now();
  if (invitation === null || invitation.revokedAt !== null || invitation.acceptedAt !== null)
    return toldNobody;
  const token = newToken();
  await openLink(resources.db, {
    id: newId(),
    tokenHash: tokenHash(token),
    of: { kind: 'invitation', academyId, invitationId: invitation.id },
    now,
    expiresAt: invitation.expiresAt,
  });
  const letter = (url: string) =>
    invitationLetter({
      name: invitation.name,
      invitedBy: invitation.by.name,
      academyName: invitation.academy.name,
      role: staffRoleOf(invitation.role),
      url,
      days: invitationDays,
    });
  const { sent } = await sendLetter({
    ctx,
    input: {
      eventId: input.eventId,
      kind: 'invitation',
      // Nobody's membership yet: the manager's list shows it under whoever invited.
      to: { membershipId: invitation.byMembership, name: invitation.name, address: invitation.email },
      academyName: invitation.academy.name,
      letter: letter(`${resources.publicUrl}/invitation#${token}`),
      kept: letter(`${resources.publicUrl}/invitation`).text,
    },
  });
  return { sent: sent ? 1 : 0 };
};
