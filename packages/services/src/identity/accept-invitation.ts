import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Reply } from '../operation-types.ts';
import type { IdentityCall, SignedIn } from './call.ts';
import { invitationBehind, openInvitation } from './invitation-behind.ts';
import { limitTries } from './limit-tries.ts';
import { meOf } from './me-of.ts';
import { personOf } from './person-of.ts';
import { readActor } from './read-actor.ts';
import { openSession } from './session.ts';

/**
 * Joins the staff by an invitation and signs in. The address is the invitation's own: whoever has an account under it
 * gives its password, anybody else chooses one.
 * @throws ProblemError link-used-up, wrong-sign-in, already-a-member, too-many-tries
 */
export const acceptInvitation = async ({
  resources,
  input,
  address,
  device,
  requestId,
}: IdentityCall<'acceptInvitation'>): Promise<SignedIn<Reply<'acceptInvitation'>>> => {
  await limitTries({ resources, what: 'link', email: input.token, address });
  const { ctx, invitationId } = await invitationBehind(resources, input.token, requestId);
  const { email } = await inTransaction(ctx, (tx) => openInvitation(tx, ctx, invitationId));
  const person = await personOf(resources, { email, name: input.name, password: input.password });
  const now = resources.clock.now();
  await inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    // Whoever comes second finds it accepted: the row is taken before anything is written.
    await tx.$queryRaw`SELECT 1 FROM public.invitation
      WHERE academy_id = ${academyId}::uuid AND id = ${invitationId}::uuid FOR UPDATE`;
    const invitation = await openInvitation(tx, ctx, invitationId);
    const id = newId();
    const { count } = await tx.membership.createMany({
      data: {
        ...{ academyId, id, personId: person.id, role: invitation.role },
        ...{ name: input.name, email, zone: invitation.academy.zone, createdAt: now },
      },
      skipDuplicates: true,
    });
    if (count === 0) await rejoin(personKey(academyId, person.id), invitation.role);
    await tx.invitation.update({
      where: { academyId_id: { academyId, id: invitationId } },
      data: { acceptedAt: now },
    });
    await audit(tx, ctx, { action: 'accept-invitation', subject: `invitation:${invitationId}` });

    /** Somebody who left the staff comes back under the old membership; a student or a colleague is one already. */
    async function rejoin(where: ReturnType<typeof personKey>, role: string): Promise<void> {
      const former = await tx.membership.findUniqueOrThrow({ where });
      if (former.endedAt === null || former.role === 'student') throw new ProblemError('already-a-member');
      await tx.membership.update({ where, data: { endedAt: null, role, name: input.name } });
    }
  });
  const opened = await openSession({ resources, personId: person.id, academyId: ctx.academyId, device });
  const actor = await readActor({ resources, token: opened.token });
  if (actor === null) throw new ProblemError('unexpected');
  return { reply: await meOf(resources, actor), opened };
};

const personKey = (academyId: string, personId: string) => ({ academyId_personId: { academyId, personId } });
