import { createPerson } from '@ballfirst/db/crossings/create-person';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import type { Resources } from '@ballfirst/services/context';
import type { AcademyLine, StaffLine } from './academies.ts';
import type { Member } from './at-time.ts';

/** Writes an academy and its staff. @returns its id and the staff by address */
export const seedAcademy = async (
  resources: Resources,
  line: AcademyLine,
  passwordHash: string,
  openedAt: Date,
): Promise<{ academyId: string; staff: Map<string, Member> }> => {
  const academyId = newId();
  const { staff: lines, workingHours, openedDaysAgo: _, ...rest } = line;
  await withAcademy(resources.db, academyId, async (tx) => {
    await tx.academy.create({
      data: {
        id: academyId,
        ...rest,
        workingHours: structuredClone(workingHours) as object,
        createdAt: openedAt,
      },
    });
  });
  const staff = new Map<string, Member>();
  for (const person of lines) {
    staff.set(person.email, await seedStaff(resources, academyId, line.zone, person, passwordHash, openedAt));
  }
  return { academyId, staff };
};

const seedStaff = async (
  resources: Resources,
  academyId: string,
  zone: string,
  person: StaffLine,
  passwordHash: string,
  now: Date,
): Promise<Member> => {
  const personId = newId();
  const membershipId = newId();
  const { name, email, role } = person;
  if (!(await createPerson(resources.db, { id: personId, email, name, hash: passwordHash, now }))) {
    throw new Error(`The demo address ${email} is taken already: the database is not empty.`);
  }
  await withAcademy(resources.db, academyId, async (tx) => {
    await tx.membership.create({
      data: { academyId, id: membershipId, personId, role, name, email, zone, createdAt: now },
    });
  });
  return { academyId, personId, membershipId, studentId: null, role, name };
};
