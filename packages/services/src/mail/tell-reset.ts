import { openLink } from '@ballfirst/db/crossings/open-link';
import { newId } from '@ballfirst/db/ids';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { newToken, tokenHash } from '../identity/session.ts';
import { inTransaction } from '../in-transaction.ts';
import { resetLetter } from './letters/reset.ts';
import { sendLetter } from './send-letter.ts';
import { type Told, toldNobody } from './send-to-student.ts';

const goodForMinutes = 30;

/**
 * Sends the link to a new password (event reset.asked). The token is made here and stands in the letter alone: a copy for
 * the manager's list would open somebody else's account.
 */
export const tellReset = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; membershipId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const member = await inTransaction(ctx, (tx) =>
    tx.membership.findUnique({
      where: { academyId_id: { academyId, id: input.membershipId } },
      include: { academy: true },
    }),
  );
  if (member === null || member.endedAt !== null) return toldNobody;
  const token = newToken();
  const now = resources.clock.now();
  await openLink(resources.db, {
    id: newId(),
    tokenHash: tokenHash(token),
    of: { kind: 'reset', personId: member.personId },
    now,
    expiresAt: new Date(now.getTime() + goodForMinutes * 60_000),
  });
  const letter = (url: string) =>
    resetLetter({ name: member.name, academyName: member.academy.name, url, minutes: goodForMinutes });
  const { sent } = await sendLetter({
    ctx,
    input: {
      eventId: input.eventId,
      kind: 'reset',
      to: { membershipId: member.id, name: member.name, address: member.email },
      academyName: member.academy.name,
      letter: letter(`${resources.publicUrl}/reset#${token}`),
      kept: letter(`${resources.publicUrl}/reset`).text,
    },
  });
  return { sent: sent ? 1 : 0 };
};
