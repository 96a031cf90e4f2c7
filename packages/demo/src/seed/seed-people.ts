import { createPerson } from '@ballfirst/db/crossings/create-person';
import { newId } from '@ballfirst/db/ids';
import type { Resources } from '@ballfirst/services/context';
import type { AcademyLine } from './academies.ts';
import { emailOf } from './email-of.ts';
import { type Past, tellPast } from './past.ts';
import { type PeopleRows, peopleRows } from './people-rows.ts';
import { type Enrolling, seedStudent } from './seed-student.ts';
import { joinedAtOf } from './story-times.ts';
import type { StudentLine } from './student-line.ts';

type Given = Omit<Enrolling, 'line' | 'personId'> & {
  readonly lines: readonly StudentLine[];
  readonly passwordHash: string;
};

/** All students of an academy as they stand today, each with an account. Juniors come by the verb, with their guardians. */
export const seedPeople = async (resources: Resources, given: Given): Promise<void> => {
  const { lines, passwordHash, academy, now, academyId } = given;
  const persons = await Promise.all(
    lines.map((line) => seedPerson(resources, { academy, line, passwordHash, now })),
  );
  await tellPast(resources, academyId, async (past) => {
    const rows: PeopleRows[] = [];
    for (const [index, line] of lines.entries()) {
      const one = { ...given, line, personId: persons[index] ?? '' };
      if (line.ageGroup === 'junior') await seedStudent(past, one);
      else rows.push(peopleRows(one));
    }
    await writeRows(past, rows);
  });
};

export const writeRows = async ({ tx }: Past, rows: readonly PeopleRows[]): Promise<void> => {
  await tx.membership.createMany({ data: rows.map(({ membership }) => membership) });
  await tx.student.createMany({ data: rows.map(({ student }) => student) });
  await tx.standingChange.createMany({ data: rows.flatMap(({ standings }) => standings) });
  await tx.auditEntry.createMany({ data: rows.flatMap(({ audit }) => audit) });
};

/** The account of a student, who may sign in. @returns the person's id */
const seedPerson = async (
  resources: Resources,
  given: { academy: AcademyLine; line: StudentLine; passwordHash: string; now: Date },
): Promise<string> => {
  const { academy, line, passwordHash: hash, now } = given;
  const id = newId();
  const email = emailOf(academy, line.key);
  const at = joinedAtOf(academy, line, now);
  if (!(await createPerson(resources.db, { id, email, name: line.name, hash, now: at }))) {
    throw new Error(`The demo address ${email} is taken already: the database is not empty.`);
  }
  return id;
};
