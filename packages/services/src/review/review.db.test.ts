import { withAcademy } from '@ballfirst/db/with-academy';
import { painSentence } from '@ballfirst/library/cautions';
import { plantedTrail, trailPicture } from '@ballfirst/swing/arc/planted-trail';
import type { Picture } from '@ballfirst/swing/marks/marks';
import { plantedFully, plantedMarks, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
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
import { framesKey } from '../clips/keys.ts';
import type { Context } from '../context.ts';
import { claimSubmission } from '../inbox/claim-submission.ts';
import { tellReplyCorrected } from '../mail/tell-reply-corrected.ts';
import type { Input } from '../operation-types.ts';
import { readReply } from '../practice/read-reply.ts';
import { chooseDiagnosis } from './choose-diagnosis.ts';
import { correctReply } from './correct-reply.ts';
import { finishReply } from './finish-reply.ts';
import { openReview } from './open-review.ts';
import { readDiagnosis } from './read-diagnosis.ts';
import { readMarks } from './read-marks.ts';
import { saveMarks } from './save-marks.ts';
import { saveReply } from './save-reply.ts';
import { secondThoughtsMs, sendReply } from './send-reply.ts';
import { undoReply } from './undo-reply.ts';

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
const opened = async (
  given: Parameters<typeof createSubmission>[1] & { unclaimed?: boolean; picture?: Picture } = {},
) => {
  const { unclaimed = false, picture = plantedPicture, ...row } = given;
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId, ...row });
  const { widthPx, heightPx, frameTimesS } = picture;
  const fps = picture === plantedPicture ? 60 : 240;
  const size = { widthPx, heightPx, frames: frameTimesS.length, fps };
  const clip = await createClip(test.db, { academyId, studentId, submissionId: id, ...size });
  const ctx = actingStaff(world, await createMembership(test.db, { academyId, name: 'Ada Reed' }));
  if (!unclaimed) await claimSubmission({ ctx, input: { id } });
  return { ctx, id, clipId: clip.id, student };
};

const handleBack = plantedMarks({ gripEndAddress: -130 }).map((mark) => ({ ...mark }));
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

  it('are timed by the true times of the frames, which phones do not keep even', async () => {
    const { ctx, id, clipId } = await opened();
    const marks = plantedFully().map((mark) => ({ ...mark }));
    const marked = { id, clipId, marks, observations: [] };
    const tempo = ({ evidence }: Awaited<ReturnType<typeof saveMarks>>) =>
      evidence.readings.find(({ key }) => key === 'tempo-ratio')?.value;
    const counted = tempo(await saveMarks({ ctx, input: { ...marked, version: 0 } }));
    const top = marks.find(({ position }) => position === 'top')?.frame ?? 0;
    // Up to the top a frame lasts a quarter longer than after it.
    const timesS = plantedPicture.frameTimesS.map(
      (_, frame) => Math.min(frame, top) / 48 + Math.max(0, frame - top) / 60,
    );
    const key = framesKey({ academyId: ctx.academyId, clipId });
    await ctx.resources.blobs.put(key, Buffer.from(JSON.stringify({ timesS })));
    const timed = tempo(await saveMarks({ ctx, input: { ...marked, version: 1 } }));
    expect(timed).toBeCloseTo(1.25 * (counted ?? Number.NaN), 6);
    const review = await openReview({ ctx, input: { id } });
    expect(review.evidence[0]?.readings.find(({ key: one }) => one === 'tempo-ratio')?.value).toBe(timed);
  });

  it('take the clubhead over frames along, under the same version, and tell the lowest point', async () => {
    const { ctx, id, clipId } = await opened({ picture: trailPicture });
    const { trail, marks } = plantedTrail(95);
    const given = { id, clipId, marks: [...marks], observations: [] };
    const saved = await saveMarks({ ctx, input: { ...given, version: 0, trail: trail.toReversed() } });
    expect(saved.marking.trail).toEqual(trail);
    const low = saved.evidence.readings.find(({ key }) => key === 'low-point-ahead-of-ball');
    expect(Math.abs((low?.value ?? 0) - 95)).toBeLessThan(2 * (low?.u ?? 0));
    expect(low?.band).toMatchObject({ low: 30, high: 145 });
    const review = await openReview({ ctx, input: { id } });
    expect(review.marking[0]?.trail).toEqual(trail);
    expect(review.evidence).toEqual([{ clipId, ...saved.evidence }]);
    // Whoever saves without it leaves it; whoever saves an empty one takes it away; an old version changes nothing.
    const left = await saveMarks({ ctx, input: { ...given, version: 1 } });
    expect(left.marking.trail).toEqual(trail);
    const old = saveMarks({ ctx, input: { ...given, version: 1, trail: [] } });
    await expect(old).rejects.toMatchObject({ code: 'changed-meanwhile' });
    const astray = saveMarks({ ctx, input: { ...given, version: 2, trail: [{ frame: 1, x: 9000, y: 1 }] } });
    await expect(astray).rejects.toMatchObject({ code: 'mark-outside-frame', fields: [{ path: 'trail.0' }] });
    const none = await saveMarks({ ctx, input: { ...given, version: 2, trail: [] } });
    expect(none.evidence.readings.map(({ key }) => key)).not.toContain('low-point-ahead-of-ball');
    expect(none.evidence.refusals.find(({ key }) => key === 'low-point-ahead-of-ball')?.words).toMatch(
      /over frames/,
    );
    expect((await readMarks({ ctx, input: { id, clipId } })).trail).toEqual([]);
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

/** Half a minute later the worker makes final what is on its way. */
const halfAMinuteLater = (ctx: Context, replyId: string) => {
  world.now = new Date(world.now.getTime() + secondThoughtsMs);
  return finishReply({ ctx: world.contextOf(ctx.academyId), input: { replyId } });
};
const sendNow = async (given: Parameters<typeof sendReply>[0]) => {
  const sending = await sendReply(given);
  await halfAMinuteLater(given.ctx, sending.id);
  return sending;
};

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
    const sent = await sendNow({ ctx, input: { id } });
    expect(sent).toMatchObject({ status: 'sending' });
    const review = await openReview({ ctx, input: { id } });
    expect(review.submission).toMatchObject({ status: 'answered', replyId: sent.id, claim: null });
    expect(review.openProgramme).toMatchObject({ drillId: 'line-brush', rung: 'rehearsal', status: 'open' });
    expect((await programmes(academyId, student.id)).map(({ status }) => status)).toEqual([
      'replaced',
      'open',
    ]);
    const again = [() => sendReply({ ctx, input: { id } }), () => saveReply({ ctx, input: draft(id, 3) })];
    for (const write of again) {
      await expect(write()).rejects.toMatchObject({ code: 'already-answered' });
    }
  });

  it('to a swing sent with pain brings a programme on hold', async () => {
    const { ctx, id, student } = await opened({ pain: 'worse' });
    await saveReply({ ctx, input: draft(id, 0) });
    await sendNow({ ctx, input: { id } });
    expect(await programmes(student.academyId, student.id)).toMatchObject([{ status: 'held' }]);
  });

  it('may be words alone, but not nothing, and no drill without its cause', async () => {
    const { ctx, id, student } = await opened();
    await expect(sendReply({ ctx, input: { id } })).rejects.toMatchObject({ code: 'wrong-state' });
    await saveReply({ ctx, input: draft(id, 0, { cause: null }) });
    await expect(sendReply({ ctx, input: { id } })).rejects.toMatchObject({ code: 'wrong-state' });
    await saveReply({ ctx, input: draft(id, 1, { cause: null, plan: null }) });
    await sendNow({ ctx, input: { id } });
    expect((await openReview({ ctx, input: { id } })).reply?.status).toBe('sent');
    expect(await programmes(student.academyId, student.id)).toEqual([]);
  });

  it('can be taken back for half a minute, in which nobody sees it and nobody changes it', async () => {
    const { ctx, id, student } = await opened();
    await saveReply({ ctx, input: draft(id, 0) });
    const sending = await sendReply({ ctx, input: { id } });
    expect(sending).toMatchObject({
      ...{ status: 'sending', sentAt: null },
      sendsAt: new Date(world.now.getTime() + secondThoughtsMs).toISOString(),
    });
    expect((await openReview({ ctx, input: { id } })).reply).toEqual(sending);
    await expect(saveReply({ ctx, input: draft(id, 2) })).rejects.toMatchObject({ code: 'wrong-state' });
    const own = actingStudent(world, student);
    await expect(readReply({ ctx: own, input: { id: sending.id } })).rejects.toMatchObject({
      code: 'not-found',
    });
    expect(
      await finishReply({ ctx: world.contextOf(ctx.academyId), input: { replyId: sending.id } }),
    ).toEqual({
      sent: false,
    });
    expect(await undoReply({ ctx, input: { id } })).toMatchObject({ status: 'draft', sendsAt: null });
    expect(await halfAMinuteLater(ctx, sending.id)).toEqual({ sent: false });
    expect(await programmes(ctx.academyId, student.id)).toEqual([]);
    const again = await sendReply({ ctx, input: { id } });
    const runs = await Promise.all([1, 2, 3].map(() => halfAMinuteLater(ctx, again.id)));
    expect(runs.filter(({ sent }) => sent)).toHaveLength(1);
    expect(await programmes(ctx.academyId, student.id)).toHaveLength(1);
    await expect(undoReply({ ctx, input: { id } })).rejects.toMatchObject({ code: 'already-answered' });
  });

  it('is corrected with its history, and the student is told of the last correction', async () => {
    const { ctx, id, student } = await opened();
    await saveReply({ ctx, input: draft(id, 0) });
    const sent = await sendNow({ ctx, input: { id } });
    const own = actingStudent(world, student);
    const correct = (words: string, version: number) =>
      correctReply({ ctx, input: { id: sent.id, words, version } });
    const { version } = await readReply({ ctx: own, input: { id: sent.id } });
    const first = await correct('Brush past the line.', version);
    await expect(correct('Another coach.', version)).rejects.toMatchObject({ code: 'changed-meanwhile' });
    world.now = new Date(world.now.getTime() + 60_000);
    const last = await correct('Brush a hand past the line.', first.version);
    const read = await readReply({ ctx: own, input: { id: sent.id } });
    expect(read).toMatchObject({
      words: 'Brush a hand past the line.',
      correctedAt: world.now.toISOString(),
    });
    expect(read.earlier.map(({ words }) => words)).toEqual(['Brush past the line.', 'Brush the line.']);
    const tell = (of: number) =>
      tellReplyCorrected({
        ctx: world.contextOf(ctx.academyId),
        input: { eventId: `00000000-0000-7000-8000-00000000000${of}`, replyId: sent.id, version: of },
      });
    expect(await tell(first.version)).toEqual({ sent: 0 });
    expect(await tell(last.version)).toEqual({ sent: 1 });
    expect(world.sendings.at(-1)?.text).toContain(painSentence);
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
