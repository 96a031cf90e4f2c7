import { StudentSet } from '@ballfirst/contracts/http/fat-risk';
import { Measuring } from '@ballfirst/contracts/http/review';
import { plantedTrail, trailPicture } from '@ballfirst/swing/arc/planted-trail';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Context } from '../context.ts';
import { claimSubmission } from '../inbox/claim-submission.ts';
import { noteLineTest } from '../line-tests/note-line-test.ts';
import type { Reply } from '../operation-types.ts';
import { measureMarks } from './measure-marks.ts';
import { openReview } from './open-review.ts';
import { readStudentSet } from './read-student-set.ts';
import { saveMarks } from './save-marks.ts';

let test: TestDatabase;
let world: SystemWorld;
let ctx: Context;
let studentId: string;
beforeAll(async () => {
  test = await testDatabase();
  world = systemWorld(test.db, factoryNow);
  ctx = actingStaff(world, await createMembership(test.db, {}));
  studentId = (await createStudent(test.db, { academyId: ctx.academyId })).id;
});
afterAll(() => test.close());

const dayMs = 86_400_000;
const daysAgo = (days: number) => new Date(factoryNow.getTime() - days * dayMs);
const { widthPx, heightPx, frameTimesS } = trailPicture;
const tally = { solid: 0, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0, counted: true };
const sevenOfTen = { ...tally, balls: 10, fat: 7, solid: 3 };

type Given = { aheadMm: number; sentAt?: Date; club?: string; swingLength?: string; lie?: string };
/** A swing of the student whose clubhead a coach has marked over frames. */
const traced = async ({ aheadMm, swingLength = 'full', lie = 'mat', ...given }: Given) => {
  const { academyId } = ctx;
  const of = { academyId, studentId, tally: sevenOfTen, lie };
  const { id } = await createSubmission(test.db, { ...of, ...given });
  const size = { widthPx, heightPx, frames: frameTimesS.length, fps: 240, swingLength };
  const clip = await createClip(test.db, { academyId, studentId, submissionId: id, ...size });
  await claimSubmission({ ctx, input: { id } });
  const { trail, marks } = plantedTrail(aheadMm);
  const input = { id, clipId: clip.id, version: 0, observations: [] };
  const saved = await saveMarks({ ctx, input: { ...input, marks: [...marks], trail: [...trail] } });
  return { id, clipId: clip.id, ...saved };
};
const told = ({ fatRisk }: Pick<Reply<'measureMarks'>, 'fatRisk'>) => {
  if (fatRisk?.kind !== 'told') throw new Error(fatRisk?.words ?? 'no trail');
  return fatRisk;
};

it('tells how often the set meets the ground behind the ball, by the count and then by a line test', async () => {
  const first = await traced({ aheadMm: 60, sentAt: daysAgo(6) });
  const alone = told(first.evidence);
  expect(alone).toMatchObject({ depthFrom: 'balls', swings: 1, setUps: 1 });
  expect(alone.fat).toBeCloseTo(7.5 / 11, 3);
  expect(alone.forward.byMm).toBeGreaterThan(20);
  // Another club, another length, longer ago: none of them is of this set.
  await traced({ aheadMm: 10, sentAt: daysAgo(5), club: 'wedge' });
  await traced({ aheadMm: 10, sentAt: daysAgo(5), swingLength: 'hip-high' });
  await traced({ aheadMm: 10, sentAt: daysAgo(40) });

  const now = await traced({ aheadMm: 40 });
  const both = told(now.evidence);
  expect(both).toMatchObject({ depthFrom: 'balls', swings: 2, setUps: 2 });
  expect(Math.abs(both.lowPointMm.value - 50)).toBeLessThan(both.lowPointMm.u);
  expect(both.missing.join(' ')).toContain('A mat hides fat shots');

  await noteLineTest({ ctx, input: { id: studentId, startsMm: [-60, -35, -45, -20, -30] } });
  const review = await openReview({ ctx, input: { id: now.id } });
  const [seen] = review.evidence;
  if (seen === undefined) throw new Error('no evidence');
  const tested = told(seen);
  expect(tested).toMatchObject({ depthFrom: 'line-test', swings: 2, setUps: 2 });
  expect(tested.used.join(' ')).toContain('line test of 5 brushes');
  // The mean brush begins 38 mm behind the line: a little over half lie beyond 30.
  expect(tested.fat).toBeGreaterThan(0.5);
  expect(tested.fat).toBeLessThan(0.75);

  // What is measured without storing it says the same, from what the review gave along.
  const set = await readStudentSet({ ctx, input: { id: now.id } });
  expect(review.set).toEqual(set);
  expect(StudentSet.parse(set)).toEqual(set);
  const others = { ...set, swings: set.swings.filter(({ clipId }) => clipId !== now.clipId) };
  const { trail, marks } = plantedTrail(40);
  const input = Measuring.parse({
    setting: { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' },
    picture: { widthPx, heightPx, frameTimesS: [...frameTimesS] },
    ...{ fault: 'fat', marks: [...marks], observations: [], trail: [...trail], set: others },
  });
  expect(told(await measureMarks({ ctx, input }))).toEqual(tested);
});

it('says nothing without a trail, and why not where it cannot', async () => {
  const sand = await traced({ aheadMm: 60, club: 'wedge', lie: 'sand' });
  expect(sand.evidence.fatRisk).toMatchObject({ kind: 'refused', why: 'sand' });
  const { id, clipId, marking } = sand;
  const unstuck = marking.marks.filter(({ point }) => !point.startsWith('target-stick'));
  const input = { id, clipId, version: marking.version, observations: [], marks: unstuck };
  const { evidence } = await saveMarks({ ctx, input });
  expect(evidence.fatRisk).toMatchObject({ why: 'no-swing', words: expect.stringContaining('mark a stick') });
  const bare = await saveMarks({ ctx, input: { ...input, version: marking.version + 1, trail: [] } });
  expect(bare.evidence.fatRisk).toBeNull();
  expect((await openReview({ ctx, input: { id } })).set).toBeNull();
});

it('is not for students', async () => {
  const { id } = await createSubmission(test.db, { academyId: ctx.academyId, studentId });
  const student = actingStudent(world, await createStudent(test.db, { academyId: ctx.academyId }));
  await expect(readStudentSet({ ctx: student, input: { id } })).rejects.toMatchObject({
    code: 'not-allowed',
  });
});
