import type { AcademyFront } from '@ballfirst/db/crossings/academy-by-slug';
import { endTrial } from '@ballfirst/services/follow-ups/end-trial';
import { enrolStudent } from '@ballfirst/services/identity/enrol-student';
import { changeStanding } from '@ballfirst/services/students/change-standing';
import type { AcademyLine } from './academies.ts';
import type { Member } from './at-time.ts';
import { emailOf } from './email-of.ts';
import type { Past } from './past.ts';
import { joinedAtOf, trialEndOf, turnAtOf } from './story-times.ts';
import type { StudentLine } from './student-line.ts';

export type Enrolling = {
  readonly academyId: string;
  readonly academy: AcademyLine;
  readonly front: AcademyFront;
  readonly manager: Member;
  readonly line: StudentLine;
  readonly personId: string;
  readonly now: Date;
};

/** Enrols a student at the time the story says, and tells how the standing went on: verb by verb. */
export const seedStudent = async (past: Past, given: Enrolling): Promise<void> => {
  const { academy, front, manager, line, personId, now } = given;
  const joinedAt = joinedAtOf(academy, line, now);
  const email = emailOf(academy, line.key);
  const { name, hand, ageGroup } = line;
  const { hasConsented: consents = true, ...guardian } = line.guardian ?? { name: '', relation: '' };
  const { student } = await enrolStudent(past.tx, past.system(joinedAt), {
    ...{ name, email, hand, ageGroup, personId },
    zone: line.zone ?? academy.zone,
    guardian: line.guardian ? { ...guardian, email: `guardian.${email}`, consents } : null,
    academy: front,
  });
  if (line.trialEnds) {
    const at = trialEndOf(academy, line, now);
    await endTrial({ ctx: past.system(at), input: { studentId: student.id } });
  }
  for (const [index, { to, reason }] of (line.turns ?? []).entries()) {
    const ctx = past.of(manager, turnAtOf(academy, line, index, now));
    await changeStanding({ ctx, input: { id: student.id, to, reason } });
  }
};
