import { academyBySlug } from '@ballfirst/db/crossings/academy-by-slug';
import { listAcademies } from '@ballfirst/db/crossings/list-academies';
import type { Resources } from '@ballfirst/services/context';
import { hashPassword } from '@ballfirst/services/identity/password';
import { type AcademyLine, academies, demoPassword } from './academies.ts';
import { hoursBefore } from './at-time.ts';
import { demoChapters } from './chapters.ts';
import { emailOf } from './email-of.ts';
import { membersOf } from './members.ts';
import { seedAcademy } from './seed-academy.ts';
import { seedBeside } from './seed-beside.ts';
import { seedPeople } from './seed-people.ts';
import { studentsOf } from './students.ts';
import { tellSwing } from './tell-swing.ts';

export type DemoPerson = {
  role: 'manager' | 'coach' | 'student';
  name: string;
  email: string;
  password: string;
};
export type DemoAcademy = { id: string; slug: string; name: string; people: DemoPerson[] };

export type Seeding = { readonly resources: Resources; readonly clipsFolder: string };

/**
 * Fills an empty database with the demo academies, their people as they stand today and the newcomers' swings, by the
 * verbs the service itself uses, at times in the past. What came before is told by `seedHistory`.
 * @param clipsFolder where the kept clips lie
 * @param now what the demo takes for the present; its history is told from the same instant
 * @returns the academies with their sign-ins, or null when there is an academy already (nothing is written)
 */
export const seedDemo = async ({
  resources,
  clipsFolder,
  now,
}: Seeding & { readonly now: Date }): Promise<DemoAcademy[] | null> => {
  if ((await listAcademies(resources.db)).length > 0) return null;
  const passwordHash = await hashPassword(demoPassword);
  const given = { resources, clipsFolder, passwordHash, now };
  return Promise.all(academies.map((academy) => seedOne({ ...given, academy })));
};

type Given = Seeding & { readonly academy: AcademyLine; readonly passwordHash: string; readonly now: Date };

const seedOne = async (given: Given): Promise<DemoAcademy> => {
  const { resources, clipsFolder, academy, now } = given;
  const { slug, name } = academy;
  const id = await seedHouse(given);
  const members = await membersOf(resources, { id, slug });
  if (slug === academies[0]?.slug) await seedBeside({ resources, members, zone: academy.zone, now });
  const early = demoChapters(academy, now).filter(({ told }) => told === 'early');
  await Promise.all(early.map((chapter) => tellSwing({ resources, clipsFolder, members, chapter })));
  const people = [
    ...academy.staff,
    ...(studentsOf[slug] ?? []).map((line) => ({
      role: 'student' as const,
      name: line.name,
      email: emailOf(academy, line.key),
    })),
  ].map(({ role, name: who, email }) => ({ role, name: who, email, password: demoPassword }));
  return { id, slug, name, people };
};

/** The academy, its staff and its students, who may all sign in. @returns the academy's id */
const seedHouse = async ({ resources, academy, passwordHash, now }: Given): Promise<string> => {
  const openedAt = hoursBefore(now, academy.openedDaysAgo * 24);
  const { academyId, staff } = await seedAcademy(resources, academy, passwordHash, openedAt);
  const manager = [...staff.values()].find((it) => it.role === 'manager');
  const front = await academyBySlug(resources.db, { slug: academy.slug });
  if (manager === undefined || front === null) throw new Error(`${academy.slug} was not written.`);
  const lines = studentsOf[academy.slug] ?? [];
  await seedPeople(resources, { academyId, academy, front, manager, lines, passwordHash, now });
  return academyId;
};
