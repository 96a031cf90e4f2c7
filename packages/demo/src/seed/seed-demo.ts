import { listAcademies } from '@ballfirst/db/crossings/list-academies';
import type { Resources } from '@ballfirst/services/context';
import { hashPassword } from '@ballfirst/services/identity/password';
import { changeStanding } from '@ballfirst/services/students/change-standing';
import { type AcademyLine, academies, demoPassword } from './academies.ts';
import { contextOf, hoursBefore, type Member } from './at-time.ts';
import { seedAcademy } from './seed-academy.ts';
import { seedAnswer } from './seed-answer.ts';
import { readKept } from './seed-clip.ts';
import { seedStudent } from './seed-student.ts';
import { seedSwing } from './seed-swing.ts';
import { settlePast } from './settle-past.ts';
import { type StudentLine, studentsOf } from './students.ts';
import { swings } from './swings.ts';

export type DemoPerson = {
  role: 'manager' | 'coach' | 'student';
  name: string;
  email: string;
  password: string;
};
export type DemoAcademy = { id: string; slug: string; name: string; people: DemoPerson[] };

/**
 * Fills an empty database with the demo academies, by the verbs the service itself uses, at times in the past.
 * @param clipsFolder where the kept clips lie
 * @returns the academies with their sign-ins, or null when there is an academy already (nothing is written)
 */
export const seedDemo = async (given: {
  resources: Resources;
  clipsFolder: string;
}): Promise<DemoAcademy[] | null> => {
  const { resources, clipsFolder } = given;
  if ((await listAcademies(resources.db)).length > 0) return null;
  const now = resources.clock.now();
  const passwordHash = await hashPassword(demoPassword);
  const demo = await Promise.all(
    academies.map((academy) => seedOne({ resources, clipsFolder, academy, passwordHash, now })),
  );
  await settlePast(resources, now);
  return demo;
};

/** One academy with its people and their stories, all students at once. */
const seedOne = async (given: {
  resources: Resources;
  clipsFolder: string;
  academy: AcademyLine;
  passwordHash: string;
  now: Date;
}): Promise<DemoAcademy> => {
  const { resources, clipsFolder, academy, passwordHash, now } = given;
  const lines = studentsOf[academy.slug] ?? [];
  const openedAt = hoursBefore(now, 100 * 24);
  const { academyId, staff } = await seedAcademy(resources, academy, passwordHash, openedAt);
  const members = await Promise.all(
    lines.map((student) => seedStudent(resources, { academyId, academy, student, passwordHash, now })),
  );
  const students = new Map<string, Member>(lines.map(({ key }, index) => [key, members[index] as Member]));
  const story = [
    ...swingSteps(resources, clipsFolder, academy.slug, students, staff, now),
    ...standingSteps(resources, staff, students, lines, now),
  ];
  await Promise.all(lines.map(({ key }) => live(story.filter((step) => step.student === key))));
  const people: DemoPerson[] = [
    ...academy.staff,
    ...members.map(({ name, email }) => ({ role: 'student' as const, name, email })),
  ].map(({ role, name, email }) => ({ role, name, email, password: demoPassword }));
  return { id: academyId, slug: academy.slug, name: academy.name, people };
};

type Step = { readonly student: string; readonly hoursAgo: number; readonly run: () => Promise<void> };

/** One student's story in the order in which it happened: what a swing weighs depends on the standing of that day. */
const live = async (story: readonly Step[]): Promise<void> => {
  for (const step of story.toSorted((one, other) => other.hoursAgo - one.hoursAgo)) await step.run();
};

const swingSteps = (
  resources: Resources,
  clipsFolder: string,
  slug: string,
  students: ReadonlyMap<string, Member>,
  staff: ReadonlyMap<string, Member>,
  now: Date,
): Step[] =>
  swings
    .filter((it) => it.academy === slug)
    .map((line) => ({
      student: line.student,
      hoursAgo: line.hoursAgo,
      run: async () => {
        const student = students.get(line.student);
        if (!student) throw new Error(`The demo swing of ${line.student} has no student.`);
        const kept = await readKept(clipsFolder, line.clip);
        const swing = await seedSwing(resources, student, line, kept, now);
        if (!line.answered) return;
        const coach = staff.get(line.answered.coach);
        if (!coach) throw new Error(`The demo reply to ${line.student} has no coach.`);
        const place = line.lie === 'mat' ? 'mat' : 'grass';
        await seedAnswer(resources, {
          coach,
          student,
          swing,
          answer: line.answered,
          truth: kept.truth,
          place,
        });
      },
    }));

/** Trials of the past end as the story says, by the manager, when their days were over. */
const standingSteps = (
  resources: Resources,
  staff: ReadonlyMap<string, Member>,
  students: ReadonlyMap<string, Member>,
  lines: readonly StudentLine[],
  now: Date,
): Step[] => {
  const manager = [...staff.values()].find((it) => it.role === 'manager');
  if (!manager) throw new Error('A demo academy has no manager.');
  const change = (line: StudentLine, to: StudentLine['standing'], hoursAgo: number): Step => ({
    student: line.key,
    hoursAgo,
    run: async () => {
      const studentId = students.get(line.key)?.studentId;
      if (!studentId) throw new Error(`The demo student ${line.key} was not written.`);
      const reason = to === 'paid' ? 'joined after the trial' : 'did not join';
      await changeStanding({
        ctx: contextOf(resources, manager, hoursBefore(now, hoursAgo)),
        input: { id: studentId, to, reason },
      });
    },
  });
  return lines.flatMap((line) => {
    const over = Math.max(1, (line.joinedDaysAgo - 13) * 24);
    if (line.standing === 'trial') return [];
    if (line.standing === 'left') return [change(line, 'lapsed', over), change(line, 'left', over - 48)];
    return [change(line, line.standing, over)];
  });
};
