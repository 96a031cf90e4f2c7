import { academyBySlug } from '@ballfirst/db/crossings/academy-by-slug';
import { createPerson } from '@ballfirst/db/crossings/create-person';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import type { Resources } from '@ballfirst/services/context';
import { enrolStudent } from '@ballfirst/services/identity/enrol-student';
import type { AcademyLine } from './academies.ts';
import { hoursBefore, type Member, systemContext } from './at-time.ts';
import type { StudentLine } from './students.ts';

const email = (academy: AcademyLine, student: StudentLine): string =>
  `${student.key}@${academy.slug}.example`;

/** Enrols a student at the time the story says, by the verb that joining uses. */
export const seedStudent = async (
  resources: Resources,
  given: { academyId: string; academy: AcademyLine; student: StudentLine; passwordHash: string; now: Date },
): Promise<Member & { readonly email: string }> => {
  const { academyId, academy, student, now } = given;
  const front = await academyBySlug(resources.db, { slug: academy.slug });
  if (front === null) throw new Error(`The demo academy ${academy.slug} was not written.`);
  const joinedAt = hoursBefore(now, student.joinedDaysAgo * 24);
  const personId = newId();
  const address = email(academy, student);
  await createPerson(resources.db, {
    id: personId,
    email: address,
    name: student.name,
    hash: given.passwordHash,
    now: joinedAt,
  });
  const ctx = systemContext(resources, academyId, joinedAt);
  const guardian = student.guardian
    ? { ...student.guardian, email: `guardian.${address}`, consents: true as const }
    : null;
  const enrolled = await withAcademy(resources.db, academyId, (tx) =>
    enrolStudent(
      tx,
      { ...ctx, tx },
      {
        name: student.name,
        email: address,
        hand: student.hand,
        ageGroup: student.ageGroup,
        zone: academy.zone,
        guardian,
        personId,
        academy: front,
      },
    ),
  );
  return {
    academyId,
    personId,
    membershipId: enrolled.membershipId,
    studentId: enrolled.student.id,
    role: 'student',
    name: student.name,
    email: address,
  };
};
