import { withAcademy } from '@ballfirst/db/with-academy';
import { plantedMarks, plantedPicture } from '@ballfirst/swing/planted-marks';
import { actingStaff } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createProgramme } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { claimSubmission } from '../inbox/claim-submission.ts';
import type { Input } from '../operation-types.ts';
import { chooseDiagnosis } from './choose-diagnosis.ts';
import { openReview } from './open-review.ts';
import { readDiagnosis } from './read-diagnosis.ts';
import { readMarks } from './read-marks.ts';
import { saveMarks } from './save-marks.ts';
import { saveReply } from './save-reply.ts';
import { sendReply } from './send-reply.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

/** A swing that waits with the picture the planted marks lie on, and a coach; claimed unless told otherwise. */
const opened = async (given: Parameters<typeof createSubmission>[1] & { unclaimed?: boolean } = {}) => {
  const { unclaimed = false, ...row } = given;
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId, ...row });
  const { widthPx, heightPx, frameTimesS } = plantedPicture;
  const size = { widthPx, heightPx, frames: frameTimesS.length, fps: 60 };
  const clip = await createClip(test.db, { academyId, studentId, submissionId: id, ...size });
  const ctx = actingStaff(world, await createMembership(test.db, { academyId, name: 'Ada Reed' }));
  if (!unclaimed) await claimSubmission({ ctx, input: { id } });
  return { ctx, id, clipId: clip.id, student };
};

const handleBack = plantedMarks({ gripEndAddress: -70 }).map((mark) => ({ ...mark }));
const plan = {
  drillId: 'line-brush',
  place: 'mat',
  exaggeration: 'mild',
  weeklyMinutes: 60,
  firstCheckInDays: 7,
} as const;
const draft = (id: string, version: number, given: Partial<Input<'saveReply'>> = {}): Input<'saveReply'> => ({
  id,
  version,
  words: 'Brush the line.',
  cause: 'hang-back',
  setUpTicks: ['handle'],
  frames: [],
  plan,
  ...given,
});

describe('marks', () => {
  it('are measured, ranked and kept with their version', async () => {
    const { ctx, id, clipId } = await opened();
    const saved = await saveMarks({
      ctx,
      input: {
        id,
        clipId,
        version: 0,
        marks: handleBack,
        observations: [{ key: 'falls-back', answer: 'no' }],
      },
    });
    expect(saved.marking).toMatchObject({ version: 1, clipId });
    expect(saved.evidence.readings.length).toBeGreaterThanOrEqual(8);
    expect(saved.evidence.causes[0]?.causeId).toBe('handle-back');
    expect(saved.evidence.causes[0]?.factors[0]).toMatch(/^strong sign: handle/);

    const review = await openReview({ ctx, input: { id } });
    expect(review.evidence).toEqual([{ clipId, ...saved.evidence }]);
    expect(review.marking[0]?.marks).toHaveLength(handleBack.length);
    expect(await readMarks({ ctx, input: { id, clipId } })).toMatchObject({ version: 1 });
    const stored = await withAcademy(test.db, ctx.academyId, (tx) =>
      tx.measurement.count({ where: { academyId: ctx.academyId, submissionId: id } }),
    );
    expect(stored).toBe(saved.evidence.readings.length);
  });

  it('of two coaches never overwrite one another', async () => {
    const { ctx, id, clipId } = await opened();
    const save = () =>
      saveMarks({ ctx, input: { id, clipId, version: 0, marks: handleBack, observations: [] } });
    const tried = await Promise.allSettled([save(), save(), save()]);
    expect(tried.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    for (const one of tried) {
      if (one.status === 'rejected') expect(one.reason).toMatchObject({ code: 'changed-meanwhile' });
    }
  });

  it('lie on the picture and on a frame the clip has, and are known to the library', async () => {
    const { ctx, id, clipId } = await opened();
    const [mark] = handleBack;
    if (mark === undefined) throw new Error('no mark');
    const save = (input: Partial<Input<'saveMarks'>>) =>
      saveMarks({ ctx, input: { id, clipId, version: 0, marks: [], observations: [], ...input } });
    for (const wrong of [
      { ...mark, x: plantedPicture.widthPx + 1 },
      { ...mark, frame: plantedPicture.frameTimesS.length },
    ]) {
      await expect(save({ marks: [wrong] })).rejects.toMatchObject({ code: 'mark-outside-frame' });
    }
    await expect(save({ observations: [{ key: 'no-such', answer: 'yes' }] })).rejects.toMatchObject({
      code: 'bad-request',
    });
    expect((await readMarks({ ctx, input: { id, clipId } })).version).toBe(0);
  });

  it('need a claim of one’s own', async () => {
    const { ctx, id, clipId } = await opened({ unclaimed: true });
    const input = { id, clipId, version: 0, marks: [], observations: [] };
    await expect(saveMarks({ ctx, input })).rejects.toMatchObject({ code: 'not-claimed' });
    const { academyId } = ctx;
    const other = actingStaff(world, await createMembership(test.db, { academyId }));
    await claimSubmission({ ctx: other, input: { id } });
    await expect(saveMarks({ ctx, input })).rejects.toMatchObject({ code: 'already-claimed' });
  });
});

describe('a diagnosis', () => {
  it('keeps what it was computed from, and whether the coach overruled it', async () => {
    const { ctx, id, clipId } = await opened();
    await saveMarks({ ctx, input: { id, clipId, version: 0, marks: handleBack, observations: [] } });
    const first = await chooseDiagnosis({
      ctx,
      input: { id, fault: 'fat', cause: 'handle-back', setUpTicks: ['handle'] },
    });
    expect(first).toMatchObject({ chosenCause: 'handle-back', overruled: false, by: 'Ada Reed' });
    world.now = new Date(factoryNow.getTime() + 1_000);
    const second = await chooseDiagnosis({
      ctx,
      input: { id, fault: 'fat', cause: 'sway-away', setUpTicks: [] },
    });
    expect(second.overruled).toBe(true);
    expect((await readDiagnosis({ ctx, input: { id } })).chosen).toEqual(second);
    expect((await openReview({ ctx, input: { id } })).diagnosis).toEqual(second);
    const row = await withAcademy(test.db, ctx.academyId, (tx) =>
      tx.diagnosis.findUniqueOrThrow({
        where: { academyId_id: { academyId: ctx.academyId, id: first.id } },
      }),
    );
    expect(row.inputs).toMatchObject({ clips: [{ clipId, marks: expect.arrayContaining(handleBack) }] });
    expect(row.ranking).toHaveProperty([0, 'causeId'], 'handle-back');
  });

  it('is of a cause the library knows', async () => {
    const { ctx, id } = await opened();
    await expect(
      chooseDiagnosis({ ctx, input: { id, fault: 'fat', cause: 'the-weather', setUpTicks: [] } }),
    ).rejects.toMatchObject({ code: 'bad-request' });
  });
});

const programmes = (academyId: string, studentId: string) =>
  withAcademy(test.db, academyId, (tx) =>
    tx.programme.findMany({ where: { academyId, studentId }, orderBy: { createdAt: 'asc' } }),
  );

describe('a reply', () => {
  it('is saved by version and sent once: answered, the drill the programme, the one before replaced', async () => {
    const { ctx, id, student } = await opened();
    const { academyId } = student;
    await createProgramme(test.db, { academyId, studentId: student.id, createdAt: new Date('2026-01-05') });
    expect(await saveReply({ ctx, input: draft(id, 0) })).toMatchObject({ version: 1, status: 'draft' });
    await expect(saveReply({ ctx, input: draft(id, 0) })).rejects.toMatchObject({
      code: 'changed-meanwhile',
    });
    await saveReply({ ctx, input: draft(id, 1) });
    const sent = await sendReply({ ctx, input: { id } });
    expect(sent).toMatchObject({ status: 'sent', sentAt: factoryNow.toISOString() });
    const review = await openReview({ ctx, input: { id } });
    expect(review.submission).toMatchObject({ status: 'answered', replyId: sent.id, claim: null });
    expect(review.openProgramme).toMatchObject({ drillId: 'line-brush', rung: 'rehearsal', status: 'open' });
    expect((await programmes(academyId, student.id)).map(({ status }) => status)).toEqual([
      'replaced',
      'open',
    ]);
    for (const again of [sendReply({ ctx, input: { id } }), saveReply({ ctx, input: draft(id, 3) })]) {
      await expect(again).rejects.toMatchObject({ code: 'already-answered' });
    }
  });

  it('to a swing sent with pain brings a programme on hold', async () => {
    const { ctx, id, student } = await opened({ pain: 'worse' });
    await saveReply({ ctx, input: draft(id, 0) });
    await sendReply({ ctx, input: { id } });
    expect(await programmes(student.academyId, student.id)).toMatchObject([{ status: 'held' }]);
  });

  it('may be words alone, but not nothing, and no drill without its cause', async () => {
    const { ctx, id, student } = await opened();
    await expect(sendReply({ ctx, input: { id } })).rejects.toMatchObject({ code: 'wrong-state' });
    await saveReply({ ctx, input: draft(id, 0, { cause: null }) });
    await expect(sendReply({ ctx, input: { id } })).rejects.toMatchObject({ code: 'wrong-state' });
    await saveReply({ ctx, input: draft(id, 1, { cause: null, plan: null }) });
    expect((await sendReply({ ctx, input: { id } })).status).toBe('sent');
    expect(await programmes(student.academyId, student.id)).toEqual([]);
  });

  it('shows only frames and drills there are', async () => {
    const { ctx, id, clipId } = await opened();
    const frame = { clipId, frame: 99, position: 'top', caption: '' };
    await expect(saveReply({ ctx, input: draft(id, 0, { frames: [frame] }) })).rejects.toMatchObject({
      code: 'mark-outside-frame',
    });
    await expect(
      saveReply({ ctx, input: draft(id, 0, { plan: { ...plan, drillId: 'no-such' } }) }),
    ).rejects.toMatchObject({ code: 'bad-request' });
  });
});
