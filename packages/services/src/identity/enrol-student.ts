import { ProblemError } from '@ballfirst/contracts/problems';
import type { AcademyFront } from '@ballfirst/db/crossings/academy-by-slug';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import { requireOther } from '../consent/ask-guardian.ts';
import { openConsent } from '../consent/open-consent.ts';
import type { Context } from '../context.ts';
import type { Input, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { trialPeriod } from '../students/trial-period.ts';

type Joining = Input<'joinAcademy'>;
const coachingOnly = { quality: false, teaching: false };
type EnrolledStudent = NonNullable<Reply<'joinAcademy'>['student']>;

/**
 * Writes membership, student and first standing of one who joins, in the transaction given.
 * @throws ProblemError already-a-member, bad-request for a guardian with the student's own address
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
    },
  });
  if (joining.ageGroup === 'junior' && joining.guardian !== null) {
    const { consents, purposes = coachingOnly, ...guardian } = joining.guardian;
    requireOther(guardian.email, joining.email);
    await openConsent(tx, ctx, { studentId, guardian, given: consents ? purposes : null });
  }
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
