import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import { stateOf } from '../consent/guardian-state.ts';
import type { Context } from '../context.ts';
import { newToken, tokenHash } from '../identity/session.ts';
import { inTransaction } from '../in-transaction.ts';
import { guardianAskedLetter } from './letters/guardian-asked.ts';
import { sendLetter } from './send-letter.ts';
import { type Told, toldNobody } from './send-to-student.ts';

/**
 * Sends a guardian the link to give, read or withdraw consent (event guardian.asked). The token is made here and stands
 * in the letter alone; letter and token are kept together, so that a second run cannot void the link that was sent.
 */
export const tellGuardian = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; consentId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  return inTransaction(ctx, async (tx) => {
    const where = { academyId_id: { academyId, id: input.consentId } };
    const row = await tx.guardianConsent.findUnique({
      where,
      include: { student: { include: { membership: true, academy: true } } },
    });
    if (row === null) throw new ProblemError('not-found');
    const { academy, membership } = row.student;
    const newer = await tx.guardianConsent.count({
      where: { academyId, studentId: row.studentId, askedAt: { gt: row.askedAt } },
    });
    if (newer > 0 || membership.endedAt !== null) return toldNobody;
    const token = newToken();
    const page = `${resources.publicUrl}/consent/${academy.slug}`;
    const letter = (url: string) =>
      guardianAskedLetter({
        guardianName: row.guardianName,
        studentName: membership.name,
        academyName: academy.name,
        safeguardContact: academy.safeguardContact,
        given: stateOf(row) === 'given',
        url,
      });
    const { sent } = await sendLetter({
      ctx: { ...ctx, tx },
      input: {
        eventId: input.eventId,
        kind: 'consent',
        copy: 'guardian',
        to: { membershipId: membership.id, name: row.guardianName, address: row.guardianEmail },
        academyName: academy.name,
        letter: letter(`${page}#${token}`),
        kept: letter(page).text,
      },
    });
    if (!sent) return toldNobody;
    await tx.guardianConsent.update({ where, data: { tokenHash: Uint8Array.from(tokenHash(token)) } });
    return { sent: 1 };
  });
};
