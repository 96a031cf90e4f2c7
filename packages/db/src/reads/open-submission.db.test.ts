import { createClip, createMembership, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newId } from '../ids.ts';
import { withAcademy } from '../with-academy.ts';
import { readOpenSubmission } from './open-submission.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 1 });
});
afterAll(() => test.close());

const at = factoryNow;
const atText = '2026-03-10T09:00:00.000Z';

describe('readOpenSubmission', () => {
  it('gives empty parts before anything was marked or answered', async () => {
    const { academyId, id: submissionId } = await createSubmission(test.db);
    const opened = await readOpenSubmission(test.db, { academyId, submissionId });
    expect(opened).toMatchObject({
      submission: { id: submissionId, status: 'waiting', sentAt: atText, claimedBy: null, version: 1 },
      student: { name: 'A student', hand: 'right', trialStartedAt: atText },
      ...{ clips: [], diagnosis: null, reply: null, measurements: [], programme: null },
    });
  });

  it('gives marks, observations, diagnosis, reply, measurements and the running programme', async () => {
    const coach = await createMembership(test.db, { name: 'The coach' });
    const { academyId } = coach;
    const submission = await createSubmission(test.db, { academyId });
    const { studentId, id: submissionId } = submission;
    const clip = await createClip(test.db, { academyId, studentId, submissionId });
    const by = { byMembership: coach.id, at };
    const mark = { position: 'address', point: 'ball', frame: 3, x: 540.5, y: 1200, source: 'coach' };
    const numbers = { key: 'hip-shift', unit: 'mm', value: 12.5, u: 4, bandLow: null, bandHigh: 60 };
    const programmeId = newId();
    await withAcademy(test.db, academyId, async (tx) => {
      await tx.mark.create({ data: { academyId, clipId: clip.id, ...mark, ...by } });
      await tx.observation.create({
        data: { academyId, clipId: clip.id, key: 'flip', answer: 'yes', ...by },
      });
      await tx.measurement.create({
        data: { academyId, submissionId, clipId: clip.id, ...numbers, methodVersion: '1', at },
      });
      await tx.diagnosis.create({
        data: {
          ...{
            academyId,
            id: newId(),
            submissionId,
            fault: 'fat',
            chosenCause: 'hang-back',
            overruled: false,
          },
          ...{ setUpTicks: ['hips'], inputs: {}, ranking: [], methodVersion: '1', ...by },
        },
      });
      await tx.reply.create({
        data: {
          ...{
            academyId,
            id: newId(),
            submissionId,
            status: 'sent',
            words: 'Well sent.',
            cause: 'hang-back',
          },
          ...{ setUpTicks: [], frames: [], programmeId, byMembership: coach.id, version: 2 },
          ...{ updatedAt: at, sentAt: at },
        },
      });
      await tx.programme.create({
        data: {
          ...{ academyId, id: programmeId, studentId, submissionId, cause: 'hang-back', createdAt: at },
          ...{ drillId: 'past-the-stick', drillVersion: 1, exaggeration: 'mild', place: 'mat' },
          ...{ weeklyMinutes: 60, rung: 'rehearsal', status: 'open' },
        },
      });
      await tx.practiceEntry.createMany({
        data: Array.from({ length: 12 }, (_, i) => ({
          ...{ academyId, id: newId(), studentId, programmeId, rung: 'rehearsal', balls: 10, clean: 8 },
          ...{ filmed: false, pain: 'none', localDate: '2026-03-10', verdict: 'stay' },
          at: new Date(at.getTime() + i * 1000),
        })),
      });
    });
    const opened = await readOpenSubmission(test.db, { academyId, submissionId });
    expect(opened?.clips[0]).toMatchObject({
      ...{ id: clip.id, widthPx: 1080, fps: 120, marks: [mark] },
      observations: [{ key: 'flip', answer: 'yes' }],
    });
    expect(opened?.measurements).toEqual([{ clipId: clip.id, ...numbers, methodVersion: '1', at: atText }]);
    expect(opened?.diagnosis).toMatchObject({ chosenCause: 'hang-back', setUpTicks: ['hips'], at: atText });
    expect(opened?.reply).toMatchObject({
      status: 'sent',
      authorName: 'The coach',
      readAt: null,
      teachingClip: null,
      withTalk: true,
      programmeId,
    });
    expect(opened?.programme).toMatchObject({ id: programmeId, status: 'open', rung: 'rehearsal' });
    expect(opened?.programme?.entries).toHaveLength(10);
    expect(opened?.programme?.entries[0]?.at).toBe('2026-03-10T09:00:11.000Z');
  });

  it('gives null for a foreign and for a missing one alike', async () => {
    const mine = await createSubmission(test.db);
    const foreign = await createSubmission(test.db);
    const { academyId } = mine;
    expect(await readOpenSubmission(test.db, { academyId, submissionId: foreign.id })).toBeNull();
    expect(await readOpenSubmission(test.db, { academyId, submissionId: newId() })).toBeNull();
  });
});
