import { signInLookup } from '@ballfirst/db/crossings/sign-in-lookup';
import { inTransaction } from '../in-transaction.ts';
import type { Reply } from '../operation-types.ts';
import { staffRoleOf } from '../staff/staff-role-of.ts';
import type { IdentityCall } from './call.ts';
import { invitationBehind, openInvitation } from './invitation-behind.ts';
import { limitTries } from './limit-tries.ts';

/** What an invitation offers, to whoever holds its link. @throws ProblemError link-used-up, too-many-tries */
export const readInvitation = async ({
  resources,
  input,
  address,
  requestId,
}: IdentityCall<'readInvitation'>): Promise<Reply<'readInvitation'>> => {
  await limitTries({ resources, what: 'link', email: input.token, address });
  const { ctx, invitationId } = await invitationBehind(resources, input.token, requestId);
  const invitation = await inTransaction(ctx, (tx) => openInvitation(tx, ctx, invitationId));
  const account = await signInLookup(resources.db, { email: invitation.email });
  return {
    academyName: invitation.academy.name,
    name: invitation.name,
    email: invitation.email,
    role: staffRoleOf(invitation.role),
    known: account !== null,
    expiresAt: invitation.expiresAt.toISOString(),
  };
};
