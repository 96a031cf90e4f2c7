import { withAcademy } from '@ballfirst/db/with-academy';
import { plantedMarks, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
  tenBalls,
} from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { claimSubmission } from '../inbox/claim-submission.ts';
import { saveMarks } from '../review/save-marks.ts';
import { rollUpCorrected } from '../roll-ups/roll-up-corrected.ts';
import { rollUpSwing } from '../roll-ups/roll-up-swing.ts';
import { correctSubmission } from './correct-submission.ts';
import { readSubmission } from './read-submission.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

/** A swing that waits, its student and a coach. */
const sent = async (given: Parameters<typeof createSubmission>[1] = {}) => {
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId, ...given });
  const { widthPx, heightPx, frameTimesS } = plantedPicture;
  const size = { widthPx, heightPx, frames: frameTimesS.length, fps: 60 };
  const clip = await createClip(test.db, { academyId, studentId, submissionId: id, ...size });
  const coach = actingStaff(world, await createMembership(test.db, { academyId }));
  return { academyId, studentId, id, clipId: clip.id, ctx: actingStudent(world, student), coach };
};
const measured = (academyId: string, submissionId: string) =>
  withAcademy(test.db, academyId, (tx) => tx.measurement.findMany({ where: { academyId, submissionId } }));

it('is its student’s until it is answered, and guarded by the version', async () => {
  const { ctx, id } = await sent();
  const right = await correctSubmission({ ctx, input: { id, version: 1, club: 'wedge', lie: 'fairway' } });
  expect(right).toMatchObject({ club: 'wedge', lie: 'fairway', version: 2 });
  const stale = { id, version: 1, club: 'driver' } as const;
  await expect(correctSubmission({ ctx, input: stale })).rejects.toMatchObject({ code: 'changed-meanwhile' });
  const done = await sent({ status: 'answered' });
  await expect(correctSubmission({ ctx: done.ctx, input: { ...stale, id: done.id } })).rejects.toMatchObject({
    code: 'already-answered',
  });
  await expect(correctSubmission({ ctx: done.ctx, input: stale })).rejects.toMatchObject({
    code: 'not-found',
  });
});

it('is a coach’s under the own claim only', async () => {
  const { coach, id } = await sent();
  const input = { id, version: 1, startLine: 'left' } as const;
  await expect(correctSubmission({ ctx: coach, input })).rejects.toMatchObject({ code: 'not-claimed' });
  const { version } = await claimSubmission({ ctx: coach, input: { id } });
  expect(await correctSubmission({ ctx: coach, input: { ...input, version } })).toMatchObject({
    startLine: 'left',
  });
});

it('finds a new place by a new tally, under the promise already given', async () => {
  const { ctx, id, academyId } = await sent();
  const before = await readSubmission({ ctx, input: { id } });
  const tally = { ...tenBalls, fat: 0, solid: 3, shank: 7 };
  const after = await correctSubmission({ ctx, input: { id, version: 1, tally } });
  expect(after).toMatchObject({ leadFault: 'shank', answerBy: before.answerBy });
  const row = await withAcademy(test.db, academyId, (tx) =>
    tx.submission.findUniqueOrThrow({ where: { academyId_id: { academyId, id } } }),
  );
  expect(row.reasons).toContainEqual(expect.objectContaining({ kind: 'fault', fault: 'shank' }));
  const over = { ...tally, balls: 9 };
  await expect(correctSubmission({ ctx, input: { id, version: 2, tally: over } })).rejects.toMatchObject({
    code: 'tally-over-total',
  });
});

it('counts the week of the swing again', async () => {
  const { ctx, id, academyId, studentId } = await sent({ sentAt: factoryNow });
  const system = world.contextOf(academyId);
  await rollUpSwing({ ctx: system, input: { submissionId: id } });
  const tally = { ...tenBalls, fat: 1, solid: 9 };
  await correctSubmission({ ctx, input: { id, version: 1, tally } });
  for (let run = 0; run < 2; run += 1) await rollUpCorrected({ ctx: system, input: { submissionId: id } });
  const weeks = await withAcademy(test.db, academyId, (tx) =>
    tx.rollUp.findMany({ where: { academyId, studentId } }),
  );
  expect(weeks).toMatchObject([{ swings: 1, tallyBalls: 10, tallyFat: 1, tallySolid: 9 }]);
});

it('measures again by club, view and hand; the marks stay', async () => {
  const { coach, id, clipId, academyId } = await sent();
  await claimSubmission({ ctx: coach, input: { id } });
  const marks = plantedMarks({ gripEndAddress: -70 }).map((mark) => ({ ...mark }));
  await saveMarks({ ctx: coach, input: { id, clipId, version: 0, marks, observations: [] } });
  const first = await measured(academyId, id);
  expect(first.length).toBeGreaterThan(3);

  const right = await correctSubmission({ ctx: coach, input: { id, version: 2, hand: 'left' } });
  expect(right.student.hand).toBe('left');
  const mirrored = await measured(academyId, id);
  const value = (rows: typeof first) => rows.find(({ key }) => key.includes('shift'))?.value ?? 0;
  expect(value(mirrored)).toBeCloseTo(-value(first), 6);

  const behind = [{ id: clipId, view: 'down-the-line' as const }];
  const turned = await correctSubmission({ ctx: coach, input: { id, version: 3, clips: behind } });
  expect(turned.clips[0]?.view).toBe('down-the-line');
  expect((await measured(academyId, id)).map(({ key }) => key)).not.toEqual(first.map(({ key }) => key));
  const audited = await withAcademy(test.db, academyId, (tx) =>
    tx.auditEntry.findMany({ where: { academyId, action: { startsWith: 'correct-' } } }),
  );
  expect(audited.map(({ action }) => action).sort()).toEqual([
    'correct-hand',
    'correct-submission',
    'correct-submission',
  ]);
});

it('knows only the clips of that swing', async () => {
  const { ctx, id } = await sent();
  const other = await sent();
  const clips = [{ id: other.clipId, swingLength: 'hip-high' as const }];
  await expect(correctSubmission({ ctx, input: { id, version: 1, clips } })).rejects.toMatchObject({
    code: 'clip-not-yours',
  });
});
