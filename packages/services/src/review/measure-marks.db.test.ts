import { Measuring } from '@ballfirst/contracts/http/review';
import { plantedTrail, trailPicture } from '@ballfirst/swing/arc/planted-trail';
import { plantedMarks, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
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
import type { Input } from '../operation-types.ts';
import { measureMarks } from './measure-marks.ts';
import { saveMarks } from './save-marks.ts';

let test: TestDatabase;
let world: SystemWorld;
let ctx: Context;
beforeAll(async () => {
  test = await testDatabase();
  world = systemWorld(test.db, factoryNow);
  ctx = actingStaff(world, await createMembership(test.db, {}));
});
afterAll(() => test.close());

const marks = plantedMarks({ gripEndAddress: -70 }).map((mark) => ({ ...mark }));
const { widthPx, heightPx } = plantedPicture;
const swing = (given: Partial<Input<'measureMarks'>> = {}): Input<'measureMarks'> => ({
  setting: { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' },
  picture: { widthPx, heightPx, frameTimesS: [...plantedPicture.frameTimesS] },
  fault: 'fat',
  marks,
  observations: [{ key: 'falls-back', answer: 'no' }],
  ...given,
});
const refused = async (given: Partial<Input<'measureMarks'>>) =>
  measureMarks({ ctx, input: swing(given) }).then(
    () => null,
    ({ code, message, fields }) => ({ code, message, path: fields[0]?.path }),
  );

it('shows what saving the same marks shows', async () => {
  const student = await createStudent(test.db, { academyId: ctx.academyId });
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId });
  const size = { widthPx, heightPx, frames: plantedPicture.frameTimesS.length, fps: 60 };
  const clip = await createClip(test.db, { academyId, studentId, submissionId: id, ...size });
  await claimSubmission({ ctx, input: { id } });
  const { observations } = swing();
  const saved = await saveMarks({ ctx, input: { id, clipId: clip.id, version: 0, marks, observations } });
  const measured = await measureMarks({ ctx, input: swing() });
  expect(measured).toEqual(saved.evidence);
  expect(measured.causes[0]?.causeId).toBe('handle-back');
});

it('tells the lowest point of the clubhead, and refuses a trail that is none', async () => {
  const planted = plantedTrail(80);
  const given = {
    marks: [...planted.marks],
    picture: { ...trailPicture, frameTimesS: [...trailPicture.frameTimesS] },
  };
  const told = await measureMarks({ ctx, input: swing({ ...given, trail: [...planted.trail] }) });
  const low = told.readings.find(({ key }) => key === 'low-point-ahead-of-ball');
  expect(Math.abs((low?.value ?? 0) - 80)).toBeLessThan(2 * (low?.u ?? 0));
  expect(await refused({ ...given, trail: [{ frame: 9999, x: 1, y: 1 }] })).toMatchObject({
    ...{ code: 'mark-outside-frame', path: 'trail.0' },
  });
  const many = Array.from({ length: 201 }, (_, frame) => ({ frame, x: 1, y: 1 }));
  expect(Measuring.safeParse({ ...swing(given), trail: many }).success).toBe(false);
});

it('names the mark that is wrong', async () => {
  const [ball, lead, trail] = marks;
  if (ball === undefined || lead === undefined || trail === undefined) throw new Error('no marks');
  expect(await refused({ marks: [ball, { ...lead, x: -1 }] })).toMatchObject({
    ...{ code: 'mark-outside-frame', path: 'marks.1', message: expect.stringContaining('lead-ankle') },
  });
  expect(await refused({ marks: [{ ...ball, frame: 9 }] })).toMatchObject({
    ...{ code: 'mark-outside-frame', path: 'marks.0', message: expect.stringContaining('9 frames') },
  });
  expect(await refused({ marks: [ball, { ...lead, x: ball.x, y: ball.y }] })).toEqual({
    code: 'bad-request',
    path: 'marks.1',
    message: 'The mark for lead ankle at address lies on that for ball at address. Place one of them again.',
  });
  expect(await refused({ marks: [ball, lead, { ...ball, x: 3 }] })).toMatchObject({ path: 'marks.2' });
});

it('names the frame that is out of order and the observation nobody knows', async () => {
  const picture = { widthPx, heightPx, frameTimesS: [0, 0.1, 0.1] };
  expect(await refused({ picture, marks: [] })).toMatchObject({
    ...{ code: 'bad-request', path: 'picture.frameTimesS.2' },
  });
  expect(await refused({ observations: [{ key: 'no-such', answer: 'yes' }] })).toMatchObject({
    ...{ code: 'bad-request', path: 'observations.0.key' },
  });
});

it('bounds what it is sent', () => {
  const [ball] = marks;
  expect(Measuring.safeParse(swing()).success).toBe(true);
  const many = Array.from({ length: 201 }, () => ball);
  for (const wrong of [
    { marks: many },
    { picture: { widthPx: 8193, heightPx, frameTimesS: [0] } },
    { picture: { widthPx, heightPx, frameTimesS: [] } },
    { picture: { widthPx, heightPx, frameTimesS: [-1] } },
    { fault: 'yips' },
  ]) {
    expect(Measuring.safeParse({ ...swing(), ...wrong }).success).toBe(false);
  }
});

it('is not for students', async () => {
  const student = actingStudent(world, await createStudent(test.db, { academyId: ctx.academyId }));
  await expect(measureMarks({ ctx: student, input: swing() })).rejects.toMatchObject({ code: 'not-allowed' });
});
