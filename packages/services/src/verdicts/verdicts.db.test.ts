import { withAcademy } from '@ballfirst/db/with-academy';
import { createClip, createStudent, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme } from '@ballfirst/testing/practice-factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { verdictShown } from './verdict-shown.ts';
import { verdictsOf } from './verdicts-of.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

const daysOn = (days: number): Date => new Date(factoryNow.getTime() + days * 86_400_000);
const tally = (fat: number, thin: number) => ({
  ...{ balls: 10, solid: 10 - fat - thin, fat, thin, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 },
  counted: true,
});

const practised = async (swings: readonly { fat: number; thin?: number; mm?: number }[]) => {
  const { academyId, id: studentId } = await createStudent(test.db);
  const sent: string[] = [];
  for (const [n, { fat, thin = 0, mm }] of swings.entries()) {
    const submission = await createSubmission(test.db, {
      ...{ academyId, studentId, sentAt: daysOn(n * 7), leadFault: 'fat', tally: tally(fat, thin) },
    });
    sent.push(submission.id);
    if (mm === undefined) continue;
    const clip = await createClip(test.db, { academyId, studentId, submissionId: submission.id });
    await withAcademy(test.db, academyId, (tx) =>
      tx.measurement.create({
        data: {
          ...{
            academyId,
            submissionId: submission.id,
            clipId: clip.id,
            methodVersion: '1',
            at: daysOn(n * 7),
          },
          ...{ key: 'hip-shift-top-lead-arm-down', unit: 'mm', value: mm, u: 10, bandLow: 30 },
        },
      }),
    );
  }
  await createProgramme(test.db, {
    ...{ academyId, studentId, submissionId: sent[0] ?? '', cause: 'hang-back', drillId: 'line-brush' },
  });
  const verdicts = await withAcademy(test.db, academyId, (tx) => verdictsOf(tx, academyId, [studentId]));
  return verdicts.get(studentId);
};

describe('the verdict on a student’s programme', () => {
  it('is none before a later swing', async () => {
    expect(await practised([{ fat: 6 }])).toBeUndefined();
  });

  it('rests on the measurement named before', async () => {
    const better = await practised([
      { fat: 6, mm: -20 },
      { fat: 4, mm: 40 },
    ]);
    expect(better).toMatchObject({
      verdict: 'better',
      by: 'measurement',
      key: 'hip-shift-top-lead-arm-down',
    });
    expect(
      await practised([
        { fat: 6, mm: 10 },
        { fat: 4, mm: 28 },
      ]),
    ).toMatchObject({ verdict: 'no-clear-change' });
  });

  it('takes the balls where nothing was measured, and the newest swing of several', async () => {
    const verdict = await practised([{ fat: 9 }, { fat: 8 }, { fat: 1 }]);
    expect(verdict).toMatchObject({ verdict: 'better', by: 'tally' });
    if (verdict === undefined) throw new Error('no verdict');
    expect(verdictShown(verdict, 'right').balls).toBe('Ground first: 9 of 10 then, 1 of 10 now.');
  });

  it('calls thin after fat over-correcting', async () => {
    expect(await practised([{ fat: 8 }, { fat: 0, thin: 6 }])).toMatchObject({ verdict: 'over-correcting' });
  });
});
