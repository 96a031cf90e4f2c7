import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStudent } from '@ballfirst/testing/acting';
import { createClip, createStudent, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { logPractice } from './log-practice.ts';
import { readHome } from './read-home.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const none = { balls: 10, solid: 4, fat: 0, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 };
const key = 'hip-shift-top-lead-arm-down';

/** A student given a drill for hang-back: what the swing before measured, then the one since with its thin balls. */
const practised = async (swings: { before: number; after: number; thin: number }) => {
  const student = await createStudent(test.db, { standing: 'paid' });
  const { academyId, id: studentId } = student;
  const swing = async (sentAt: string, tally: typeof none & { counted: boolean }, value: number) => {
    const given = { academyId, studentId, status: 'answered', sentAt: new Date(sentAt) };
    const { id } = await createSubmission(test.db, { ...given, tally, leadFault: 'fat' });
    const clip = await createClip(test.db, { academyId, studentId, submissionId: id });
    await withAcademy(test.db, academyId, (tx) =>
      tx.measurement.create({
        data: {
          ...{ academyId, submissionId: id, clipId: clip.id, key, unit: 'mm', value, u: 8 },
          ...{ bandLow: 30, bandHigh: 120, methodVersion: '1', at: factoryNow },
        },
      }),
    );
    return id;
  };
  const submissionId = await swing('2026-03-01T09:00:00Z', { ...none, fat: 6, counted: true }, swings.before);
  const programme = await createProgramme(test.db, {
    ...{ academyId, studentId, submissionId, cause: 'hang-back', drillId: 'line-brush' },
  });
  await swing('2026-03-09T09:00:00Z', { ...none, thin: swings.thin, counted: true }, swings.after);
  const ctx = actingStudent(world, student);
  const entry = { rung: 'rehearsal', balls: 10, clean: 7, filmed: false, pain: 'none' as const };
  const logged = await logPractice({ ctx, input: { id: programme.id, ...entry } });
  return { ctx, warning: logged.programme.overCorrection };
};

it('after an entry says that thin balls are the drill working, and what then', async () => {
  const { ctx, warning } = await practised({ before: 5, after: 60, thin: 6 });
  expect(warning?.how).toBe('into');
  expect(warning?.words).toMatch(/thin/i);
  expect(warning?.words).toContain('no new fault');
  expect((await readHome({ ctx })).programme?.overCorrection).toEqual(warning);
});

it('says to ease off where the movement has gone through its band', async () => {
  const { warning } = await practised({ before: 5, after: 150, thin: 6 });
  expect(warning).toMatchObject({ how: 'through', words: expect.stringContaining('half as much') });
});

it('says nothing where the opposite miss has not grown, or the movement stays where it was', async () => {
  expect((await practised({ before: 5, after: 60, thin: 0 })).warning).toBeNull();
  expect((await practised({ before: 5, after: 6, thin: 6 })).warning).toBeNull();
});
