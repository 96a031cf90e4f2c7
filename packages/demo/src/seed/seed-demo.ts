import { listAcademies } from '@ballfirst/db/crossings/list-academies';
import { markOutboxSent } from '@ballfirst/db/crossings/mark-outbox-sent';
import { takeOutbox } from '@ballfirst/db/crossings/take-outbox';
import type { Resources } from '@ballfirst/services/context';
import { hashPassword } from '@ballfirst/services/identity/password';
import { changeStanding } from '@ballfirst/services/students/change-standing';
import { academies, demoPassword } from './academies.ts';
import { contextOf, hoursBefore, type Member } from './at-time.ts';
import { seedAcademy } from './seed-academy.ts';
import { seedAnswer } from './seed-answer.ts';
import { readKept } from './seed-clip.ts';
import { seedStudent } from './seed-student.ts';
import { seedSwing } from './seed-swing.ts';
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
  const demo: DemoAcademy[] = [];
  for (const academy of academies) {
    const { academyId, staff } = await seedAcademy(
      resources,
      academy,
      passwordHash,
      hoursBefore(now, 100 * 24),
    );
    const people: DemoPerson[] = academy.staff.map(({ role, name, email }) => ({
      role,
      name,
      email,
      password: demoPassword,
    }));
    const students = new Map<string, Member>();
    for (const student of studentsOf[academy.slug] ?? []) {
      const member = await seedStudent(resources, { academyId, academy, student, passwordHash, now });
      students.set(student.key, member);
      people.push({ role: 'student', name: member.name, email: member.email, password: demoPassword });
    }
    await seedSwings(resources, clipsFolder, academy.slug, students, staff, now);
    const manager = [...staff.values()].find((it) => it.role === 'manager');
    if (manager) await seedStandings(resources, manager, students, studentsOf[academy.slug] ?? [], now);
    demo.push({ id: academyId, slug: academy.slug, name: academy.name, people });
  }
  await forgetEvents(resources);
  return demo;
};

const seedSwings = async (
  resources: Resources,
  clipsFolder: string,
  slug: string,
  students: ReadonlyMap<string, Member>,
  staff: ReadonlyMap<string, Member>,
  now: Date,
): Promise<void> => {
  const mine = swings.filter((it) => it.academy === slug).sort((a, b) => b.hoursAgo - a.hoursAgo);
  for (const line of mine) {
    const student = students.get(line.student);
    if (!student) throw new Error(`The demo swing of ${line.student} has no student.`);
    const kept = await readKept(clipsFolder, line.clip);
    const swing = await seedSwing(resources, student, line, kept, now);
    if (!line.answered) continue;
    const coach = staff.get(line.answered.coach);
    if (!coach) throw new Error(`The demo reply to ${line.student} has no coach.`);
    await seedAnswer(resources, {
      coach,
      student,
      swing,
      answer: line.answered,
      truth: kept.truth,
      place: line.lie === 'mat' ? 'mat' : 'grass',
    });
  }
};

/** Trials of the past end as the story says, by the manager, when their days were over. */
const seedStandings = async (
  resources: Resources,
  manager: Member,
  students: ReadonlyMap<string, Member>,
  lines: readonly StudentLine[],
  now: Date,
): Promise<void> => {
  for (const line of lines) {
    const student = students.get(line.key);
    if (line.standing === 'trial' || !student?.studentId) continue;
    const steps: ('paid' | 'lapsed' | 'left' | 'paused')[] =
      line.standing === 'left' ? ['lapsed', 'left'] : [line.standing];
    let hours = Math.max(1, (line.joinedDaysAgo - 12) * 24);
    for (const to of steps) {
      await changeStanding({
        ctx: contextOf(resources, manager, hoursBefore(now, hours)),
        input: {
          id: student.studentId,
          to,
          reason: to === 'paid' ? 'joined after the trial' : 'did not join',
        },
      });
      hours = Math.max(1, hours - 24);
    }
  }
};

/** The past was answered in its own time: nobody gets a letter about it today. */
const forgetEvents = async (resources: Resources): Promise<void> => {
  const now = resources.clock.now();
  for (;;) {
    const rows = await takeOutbox(resources.db, {
      limit: 500,
      now: new Date(now.getTime() + 1000),
      retakeAfterSeconds: 60,
    });
    if (rows.length === 0) return;
    await markOutboxSent(resources.db, { ids: rows.map((row) => row.id), now });
  }
};
