import type { GuardianConsent, Student } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { hasConsent } from '../students/require-consent.ts';

/** The consent that counts: the newest that was asked for. */
export const latestConsent = (tx: Tx, ctx: Context, studentId: string): Promise<GuardianConsent | null> =>
  tx.guardianConsent.findFirst({
    where: { academyId: ctx.academyId, studentId },
    orderBy: [{ askedAt: 'desc' }, { id: 'desc' }],
  });

export const stateOf = (row: GuardianConsent): 'asked' | 'given' | 'withdrawn' => {
  if (row.withdrawnAt !== null) return 'withdrawn';
  return row.givenAt === null ? 'asked' : 'given';
};

/** Where a student's consent stands, as the student reads it. */
export const guardianState = async (
  tx: Tx,
  ctx: Context,
  student: Student,
): Promise<Reply<'readGuardian'>> => {
  const nobody = { guardian: null, at: null, textVersion: null };
  if (student.ageGroup !== 'junior') return { state: 'not-needed', ...nobody };
  const row = await latestConsent(tx, ctx, student.id);
  if (row === null) return { state: hasConsent(student) ? 'given' : 'missing', ...nobody };
  return {
    state: stateOf(row),
    guardian: { name: row.guardianName, email: row.guardianEmail },
    at: (row.withdrawnAt ?? row.givenAt ?? row.askedAt).toISOString(),
    textVersion: row.textVersion,
  };
};
