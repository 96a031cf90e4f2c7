import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createMembership, createStudent, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { createEntry, createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { noteLineTest } from '../line-tests/note-line-test.ts';
import { readHome } from '../practice/read-home.ts';
import { readReply } from '../practice/read-reply.ts';
import { openReview } from '../review/open-review.ts';
import { readStudent } from '../students/read-student.ts';
import { noteLesson } from './note-lesson.ts';
import { readAbout } from './read-about.ts';
import { saveCoachNote } from './save-coach-note.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const later = (hours: number): Date => new Date(factoryNow.getTime() + hours * 3_600_000);
const someone = async () => {
  const coach = await createMembership(test.db, { name: 'Bo' });
  const { academyId } = coach;
  const membership = await createMembership(test.db, { academyId, role: 'student', name: 'Ada' });
  const student = await createStudent(test.db, {
    ...{ academyId, membershipId: membership.id, goal: 'Clean from a mat' },
    ...{ bodyNote: 'an old knee', bodyAgreedAt: factoryNow },
  });
  return { academyId, student, id: student.id, coach: actingStaff(world, coach) };
};

describe('about a student', () => {
  it('tells wishes, the last cause with its drill, and all that happened, the newest first', async () => {
    const { academyId, student, id, coach } = await someone();
    const swing = await createSubmission(test.db, {
      ...{ academyId, studentId: id, sentAt: factoryNow, pain: 'new', note: 'Off a mat.' },
    });
    const programme = await createProgramme(test.db, {
      ...{ academyId, studentId: id, submissionId: swing.id, createdAt: later(2) },
    });
    await createReply(test.db, programme, { sentAt: later(2), readAt: later(3) });
    await createEntry(test.db, programme, { at: later(20), balls: 10, clean: 7 });
    world.now = later(30);
    await noteLesson({ ctx: coach, input: { id, localDate: '2026-03-11', words: 'Grip, half an hour.' } });
    world.now = later(31);
    await noteLineTest({
      ctx: actingStudent(world, student),
      input: { id, startsMm: [-40, -25, -60, -10, -35] },
    });
    const about = await readAbout({ ctx: coach, input: { id } });
    // The reply and its programme share an instant: either may stand first.
    const kinds = about.timeline.map(({ kind }) => kind);
    expect([...kinds.slice(0, 3), ...kinds.slice(3, 5).sort(), ...kinds.slice(5)]).toEqual([
      ...['line-test', 'lesson', 'entry', 'programme', 'reply', 'swing'],
    ]);
    expect(about).toMatchObject({
      student: { name: 'Ada', units: 'metric' },
      means: { goal: 'Clean from a mat', body: 'an old knee' },
      last: {
        cause: 'thrown-early',
        drill: 'Flat towel',
        entries: 1,
        balls: 10,
        clean: 7,
        status: 'open',
      },
      lineTest: { behind: 5, meanStartMm: -34, by: 'Ada' },
      older: false,
    });
    expect(about.timeline.at(-1)).toMatchObject({ kind: 'swing', pain: 'new', words: 'Off a mat.' });
  });

  it('tells a manager that the body was spoken of, not what was said', async () => {
    const { academyId, id } = await someone();
    const manager = await createMembership(test.db, { academyId, role: 'manager' });
    const about = await readAbout({ ctx: actingStaff(world, manager), input: { id } });
    expect(about.means).toMatchObject({ body: null, bodyAgreed: true });
  });

  it('shows eighty things, the newest, and says that there is more', async () => {
    const { academyId, id, coach } = await someone();
    const programme = await createProgramme(test.db, { academyId, studentId: id });
    for (let hour = 1; hour <= 82; hour += 1) await createEntry(test.db, programme, { at: later(hour) });
    const { timeline, older } = await readAbout({ ctx: coach, input: { id } });
    expect([timeline.length, older]).toEqual([80, true]);
    expect(timeline[0]?.at).toBe(later(82).toISOString());
    expect(timeline.at(-1)?.at).toBe(later(3).toISOString());
  });
});

describe('the private note', () => {
  it('is kept, never overwritten by one who has not seen it, and audited without its words', async () => {
    const { academyId, id, coach } = await someone();
    const other = actingStaff(world, await createMembership(test.db, { academyId, name: 'Cy' }));
    const first = await saveCoachNote({ ctx: coach, input: { id, words: 'Likes to be shown.', version: 0 } });
    expect(first).toMatchObject({ version: 1, by: 'Bo' });
    await expect(
      saveCoachNote({ ctx: other, input: { id, words: 'Shy.', version: 0 } }),
    ).rejects.toMatchObject({ code: 'changed-meanwhile' });
    expect(await saveCoachNote({ ctx: other, input: { id, words: '', version: 1 } })).toMatchObject({
      ...{ words: '', version: 2, by: 'Cy' },
    });
    const lines = await withAcademy(test.db, academyId, (tx) =>
      tx.auditEntry.findMany({ where: { academyId, action: 'save-coach-note' } }),
    );
    expect(lines).toHaveLength(2);
    expect(JSON.stringify(lines)).not.toContain('shown');
  });

  it('lets one of two at the same time through', async () => {
    const { id, coach } = await someone();
    const save = (words: string) => saveCoachNote({ ctx: coach, input: { id, words, version: 0 } });
    const told = await Promise.allSettled([save('One.'), save('Two.'), save('Three.')]);
    expect(told.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
  });

  it('is never shown to the student, nor the lesson’s note with a reply', async () => {
    const { academyId, student, id, coach } = await someone();
    const programme = await createProgramme(test.db, { academyId, studentId: id });
    const reply = await createReply(test.db, programme);
    const secret = 'Slow to trust a change.';
    await saveCoachNote({ ctx: coach, input: { id, words: secret, version: 0 } });
    const own = actingStudent(world, student);
    await expect(readAbout({ ctx: own, input: { id } })).rejects.toMatchObject({ code: 'not-allowed' });
    const seen = [await readHome({ ctx: own }), await readReply({ ctx: own, input: { id: reply.id } })];
    expect(JSON.stringify(seen)).not.toContain(secret);
    expect(JSON.stringify(await readStudent({ ctx: coach, input: { id } }))).not.toContain(secret);
    const review = await openReview({ ctx: coach, input: { id: programme.submissionId } });
    expect(JSON.stringify(review)).not.toContain(secret);
  });
});

describe('a lesson in person', () => {
  it('is noted for a day that has come where the student is', async () => {
    const { academyId, id, coach } = await someone();
    const input = { id, localDate: '2026-03-11', words: 'Tomorrow.' };
    await expect(noteLesson({ ctx: coach, input })).rejects.toMatchObject({ code: 'bad-request' });
    const membership = await createMembership(test.db, {
      ...{ academyId, role: 'student', zone: 'Pacific/Kiritimati' },
    });
    const ahead = await createStudent(test.db, { academyId, membershipId: membership.id });
    // 09:00 UTC is 23:00 on Kiritimati, at fourteen hours ahead: still the 10th; two hours later it is the 11th.
    world.now = later(2);
    const about = await noteLesson({ ctx: coach, input: { ...input, id: ahead.id } });
    expect(about.timeline).toMatchObject([{ kind: 'lesson', localDate: '2026-03-11', by: 'Bo' }]);
  });
});
