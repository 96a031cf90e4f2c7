import { ProblemError } from '@ballfirst/contracts/problems';
import type { AcademyFront } from '@ballfirst/db/crossings/academy-by-slug';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import type { Context } from '../context.ts';
import type { Input, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { trialPeriod } from '../students/trial-period.ts';
import { consentText } from './consent-text.ts';

type Joining = Input<'joinAcademy'>;
type EnrolledStudent = NonNullable<Reply<'joinAcademy'>['student']>;

/** What stands in the student's row about the consent of a guardian; purposes are agreed to one by one. */
const consentOf = (guardian: NonNullable<Joining['guardian']>, at: Date) => ({
  guardianName: guardian.name,
  guardianEmail: guardian.email,
  relation: guardian.relation,
  textVersion: consentText.version,
  purposes: { coaching: true },
  at: at.toISOString(),
  withdrawnAt: null,
});

/**
 * Writes membership, student and first standing of one who joins, in the transaction given.
 * @throws ProblemError already-a-member
 */
export const enrolStudent = async (
  tx: Tx,
  ctx: Context,
  joining: Omit<Joining, 'academy' | 'password'> & {
    readonly personId: string;
    readonly academy: AcademyFront;
  },
): Promise<{ membershipId: string; student: EnrolledStudent }> => {
  const { academyId } = ctx;
  const now = ctx.resources.clock.now();
  const membershipId = newId();
  const studentId = newId();
  const { count } = await tx.membership.createMany({
    data: {
      academyId,
      id: membershipId,
      personId: joining.personId,
      role: 'student',
      name: joining.name,
      email: joining.email,
      zone: joining.zone,
      createdAt: now,
    },
    skipDuplicates: true,
  });
  if (count === 0) throw new ProblemError('already-a-member');
  const { trialDays, trialStarts } = joining.academy;
  const trial =
    trialStarts === 'joining' ? trialPeriod({ startedAt: now, days: trialDays, zone: joining.zone }) : null;
  await tx.student.create({
    data: {
      academyId,
      id: studentId,
      membershipId,
      hand: joining.hand,
      ageGroup: joining.ageGroup,
      units: 'metric',
      standing: 'trial',
      createdAt: now,
      trialStartedAt: trial?.trialStartedAt ?? null,
      trialEndsAt: trial?.trialEndsAt ?? null,
      ...(joining.guardian === null ? {} : { consent: consentOf(joining.guardian, now) }),
    },
  });
  await tx.standingChange.create({
    data: { academyId, id: newId(), studentId, toStanding: 'trial', reason: 'joined', at: now },
  });
  await audit(tx, ctx, { action: 'join-academy', subject: `student:${studentId}` });
  await emit(tx, ctx, 'student.joined', { studentId });
  const student: EnrolledStudent = {
    id: studentId,
    hand: joining.hand,
    standing: 'trial',
    trialEndsAt: trial?.trialEndsAt.toISOString() ?? null,
  };
  return { membershipId, student };
};
