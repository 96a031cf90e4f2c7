import type { GuardianConsent } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import type { Context } from '../context.ts';
import { unclaimed } from '../inbox/require-claim.ts';
import { keepStanding } from './keep-standing.ts';

/**
 * Ends a consent: nothing more can be sent, swings that nobody has answered leave the inbox, and every video closes at
 * once for everybody; the worker removes the files (`eraseClip`). Words and numbers that were answered stay, without
 * pictures. Ended before, nothing changes.
 */
export const endConsent = async (
  tx: Tx,
  ctx: Context,
  row: GuardianConsent,
  evidence: 'link' | 'letter',
): Promise<GuardianConsent> => {
  if (row.withdrawnAt !== null) return row;
  const { academyId } = ctx;
  const now = ctx.resources.clock.now();
  const ended = await tx.guardianConsent.update({
    where: { academyId_id: { academyId, id: row.id } },
    data: { withdrawnAt: now, quality: false, teaching: false },
  });
  await keepStanding(tx, ctx, ended);
  const { count } = await tx.submission.updateMany({
    where: {
      academyId,
      studentId: row.studentId,
      status: { in: ['preparing', 'needs-clip', 'waiting', 'film-again'] },
    },
    data: { status: 'withdrawn', ...unclaimed, version: { increment: 1 } },
  });
  const closed = await tx.clip.updateMany({
    where: { academyId, studentId: row.studentId, status: { not: 'erased' } },
    data: { status: 'erased', eraseAt: now },
  });
  const detail = { evidence, swingsWithdrawn: count, videosClosed: closed.count };
  await audit(tx, ctx, { action: 'withdraw-consent', subject: `consent:${row.id}`, detail });
  return ended;
};
