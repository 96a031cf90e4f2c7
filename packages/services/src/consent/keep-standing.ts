import type { GuardianConsent } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

/** Copies a consent into the student's row, where uploads, letters and lists look. Purposes hold only while it is given. */
export const keepStanding = async (tx: Tx, ctx: Context, row: GuardianConsent): Promise<void> => {
  const given = row.givenAt !== null;
  await tx.student.update({
    where: { academyId_id: { academyId: ctx.academyId, id: row.studentId } },
    data: {
      consent: {
        guardianName: row.guardianName,
        guardianEmail: row.guardianEmail,
        relation: row.relation,
        textVersion: row.textVersion,
        purposes: { coaching: given, quality: given && row.quality, teaching: given && row.teaching },
        at: row.givenAt?.toISOString() ?? null,
        withdrawnAt: row.withdrawnAt?.toISOString() ?? null,
      },
    },
  });
};
