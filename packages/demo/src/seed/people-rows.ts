import type { Prisma } from '@ballfirst/db/generated/client';
import { newId } from '@ballfirst/db/ids';
import { trialPeriod } from '@ballfirst/services/students/trial-period';
import type { AcademyLine } from './academies.ts';
import type { Member } from './at-time.ts';
import { emailOf } from './email-of.ts';
import { joinedAtOf, trialEndOf, turnAtOf } from './story-times.ts';
import type { Standing, StudentLine } from './student-line.ts';

type Given = {
  readonly academyId: string;
  readonly academy: AcademyLine;
  readonly manager: Member;
  readonly line: StudentLine;
  readonly personId: string;
  readonly now: Date;
};
type Change = {
  readonly from: Standing | null;
  readonly to: Standing;
  readonly reason: string;
  readonly by: Member | null;
  readonly at: Date;
  readonly action: string;
};

/** What became of a student's standing, oldest first. */
const changesOf = ({ academy, line, manager, now }: Given): Change[] => {
  const joinedAt = joinedAtOf(academy, line, now);
  const changes: Change[] = [
    line.isInvited
      ? {
          ...{ from: null, to: 'invited', reason: 'asked to come after the open day', at: joinedAt },
          ...{ by: manager, action: 'invite-student' },
        }
      : { from: null, to: 'trial', reason: 'joined', by: null, at: joinedAt, action: 'join-academy' },
  ];
  if (line.trialEnds) {
    const at = trialEndOf(academy, line, now);
    changes.push({ from: 'trial', to: 'lapsed', reason: 'trial-ended', by: null, at, action: 'end-trial' });
  }
  for (const [index, { to, reason }] of (line.turns ?? []).entries()) {
    const from = changes.at(-1)?.to ?? null;
    const at = turnAtOf(academy, line, index, now);
    changes.push({ from, to, reason, by: manager, at, action: 'change-standing' });
  }
  return changes;
};

export type PeopleRows = {
  readonly membership: Prisma.MembershipCreateManyInput;
  readonly student: Prisma.StudentCreateManyInput;
  readonly standings: readonly Prisma.StandingChangeCreateManyInput[];
  readonly audit: readonly Prisma.AuditEntryCreateManyInput[];
};

/**
 * The rows that `enrolStudent`, `endTrial` and `changeStanding` leave behind for a grown-up, all at once: a cold start
 * may not wait for three verbs a head. A test holds them against the verbs. No verb invites students yet.
 */
export const peopleRows = (given: Given): PeopleRows => {
  const { academyId, academy, line, personId, now } = given;
  const [membershipId, studentId] = [newId(), newId()];
  const changes = changesOf(given);
  const zone = line.zone ?? academy.zone;
  const { name, hand, ageGroup } = line;
  const createdAt = joinedAtOf(academy, line, now);
  const hasTrial = !line.isInvited && academy.trialStarts === 'joining';
  const trial = hasTrial ? trialPeriod({ startedAt: createdAt, days: academy.trialDays, zone }) : {};
  const email = emailOf(academy, line.key);
  return {
    membership: {
      ...{ academyId, id: membershipId, personId, role: 'student', name, email, zone, createdAt },
    },
    student: {
      ...{ academyId, id: studentId, membershipId, hand, ageGroup, units: 'metric', createdAt },
      standing: changes.at(-1)?.to ?? 'trial',
      ...trial,
    },
    standings: changes.map(({ from, to, reason, by, at }) => ({
      ...{ academyId, id: newId(), studentId, reason, at },
      ...{ fromStanding: from, toStanding: to, byMembership: by?.membershipId ?? null },
    })),
    audit: changes.map(({ from, to, by, at, action }) => ({
      ...{ academyId, id: newId(), at, action, subject: `student:${studentId}`, requestId: 'demo' },
      actor: by === null ? 'system:demo' : `membership:${by.membershipId}`,
      detail: action === 'change-standing' ? { from, to } : {},
    })),
  };
};
