import { localDate } from '@ballfirst/calendar/local-date';
import { noteLesson } from '@ballfirst/services/about/note-lesson';
import { saveCoachNote } from '@ballfirst/services/about/save-coach-note';
import type { Resources } from '@ballfirst/services/context';
import { setLearning } from '@ballfirst/services/learning/set-learning';
import { noteLineTest } from '@ballfirst/services/line-tests/note-line-test';
import { readMeans } from '@ballfirst/services/students/read-means';
import { saveMeans } from '@ballfirst/services/students/save-means';
import { keepTeachingClip } from '@ballfirst/services/teaching/keep-teaching-clip';
import { contextOf, hoursBefore } from './at-time.ts';
import { type BesideLine, besideLines, teachingLines } from './beside-lines.ts';
import type { Members } from './members.ts';

type Given = {
  readonly resources: Resources;
  readonly members: Members;
  readonly zone: string;
  readonly now: Date;
};

/** Before the first swing that is told of. */
const learnsSinceDaysAgo = 92;

/**
 * Tells what was decided and written down beside the lessons, by the verbs: that the academy learns from its coaches; wishes,
 * notes, lessons in person, line tests, films.
 */
export const seedBeside = async (given: Given): Promise<void> => {
  const { resources, members, now } = given;
  const then = hoursBefore(now, learnsSinceDaysAgo * 24);
  await setLearning({ ctx: contextOf(resources, members.coach('odile'), then), input: { on: true } });
  for (const { cause, title, path, words } of teachingLines) {
    const ctx = contextOf(resources, members.coach('tamsin'), hoursBefore(now, 200));
    const url = `https://films.quillmere.example/${path}`;
    await keepTeachingClip({ ctx, input: { cause, title, url, words } });
  }
  for (const line of besideLines) await seedLine(given, line);
};

const seedLine = async ({ resources, members, zone, now }: Given, line: BesideLine): Promise<void> => {
  const { note, told, lesson, lineTest } = line;
  const student = members.student(line.student);
  const id = student.studentId;
  if (id === null) throw new RangeError(`${line.student} is no student.`);
  const own = (daysAgo: number) => contextOf(resources, student, hoursBefore(now, daysAgo * 24));
  const coach = (daysAgo: number) =>
    contextOf(resources, members.coach(line.coach), hoursBefore(now, daysAgo * 24));
  if (told !== undefined) {
    const before = await readMeans({ ctx: own(3) });
    const input = { ...before, goal: told.goal, body: told.body, bodyAgreed: told.body !== null };
    await saveMeans({ ctx: own(3), input });
  }
  if (note !== undefined) await saveCoachNote({ ctx: coach(2), input: { id, words: note, version: 0 } });
  if (lesson !== undefined) {
    const day = localDate(hoursBefore(now, lesson.daysAgo * 24), zone);
    await noteLesson({
      ctx: coach(lesson.daysAgo),
      input: { id, localDate: day, words: lesson.words },
    });
  }
  if (lineTest !== undefined) {
    await noteLineTest({ ctx: own(lineTest.daysAgo), input: { id, startsMm: [...lineTest.startsMm] } });
  }
};
