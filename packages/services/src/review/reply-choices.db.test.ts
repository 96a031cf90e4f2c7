import type { Student } from '@ballfirst/db/generated/client';
import { withAcademy } from '@ballfirst/db/with-academy';
import { causeById } from '@ballfirst/library/causes';
import { everyDrill } from '@ballfirst/library/cautions';
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
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Context } from '../context.ts';
import { claimSubmission } from '../inbox/claim-submission.ts';
import type { Input } from '../operation-types.ts';
import { offerProgramme } from '../practice/offer-programme.ts';
import { readReply } from '../practice/read-reply.ts';
import { chooseDiagnosis } from './choose-diagnosis.ts';
import { finishReply } from './finish-reply.ts';
import { openReview } from './open-review.ts';
import { saveMarks } from './save-marks.ts';
import { saveReply } from './save-reply.ts';
import { secondThoughtsMs, sendReply } from './send-reply.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 6 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

/** A claimed swing with a clip of the planted picture, of a student with these means. */
const opened = async (means: Partial<Omit<Student, 'consent'>> = {}) => {
  const student = await createStudent(test.db, means);
  const { academyId, id: studentId } = student;
  const { id } = await createSubmission(test.db, { academyId, studentId, lie: 'mat' });
  const { widthPx, heightPx, frameTimesS } = plantedPicture;
  const size = { widthPx, heightPx, frames: frameTimesS.length, fps: 60 };
  const clip = await createClip(test.db, { academyId, studentId, submissionId: id, ...size });
  const ctx = actingStaff(world, await createMembership(test.db, { academyId, name: 'Ada Reed' }));
  await claimSubmission({ ctx, input: { id } });
  return { ctx, id, clipId: clip.id, student };
};

const plan: NonNullable<Input<'saveReply'>['plan']> = {
  ...{ drillId: 'line-brush', place: 'mat', exaggeration: 'mild' },
  ...{ weeklyMinutes: 60, firstCheckInDays: 7 },
};
const draft = (id: string, version: number, given: Partial<Input<'saveReply'>> = {}): Input<'saveReply'> => ({
  ...{ id, version, words: 'Brush the line.', cause: 'hang-back', setUpTicks: [], frames: [], plan },
  ...given,
});
const sent = async (ctx: Context, id: string) => {
  const { id: replyId } = await sendReply({ ctx, input: { id } });
  world.now = new Date(world.now.getTime() + secondThoughtsMs);
  const done = await finishReply({ ctx: world.contextOf(ctx.academyId), input: { replyId } });
  return { replyId, ...done };
};
const audits = (ctx: Context, action: string) =>
  withAcademy(test.db, ctx.academyId, (tx) =>
    tx.auditEntry.findMany({ where: { academyId: ctx.academyId, action } }),
  );

describe('the programme offered', () => {
  it('fits days, minutes, place and balls, and says what was left out and why', async () => {
    const { ctx, id } = await opened({ daysPerWeek: 3, minutesPerDay: 15, place: 'mat', balls: 20 });
    const offer = await offerProgramme({ ctx, input: { id, cause: 'hang-back' } });
    expect(offer).toMatchObject({
      cause: 'hang-back',
      plan: { place: 'mat', daysPerWeek: 3, minutesPerDay: 15, weeklyMinutes: 45, second: null },
      ballsAtMost: 20,
    });
    expect(offer.session?.words[0]).toBe('Three days a week, 15 minutes each time.');
    expect(offer.means).toContain('20 balls');
    expect(offer.leftOut).toContainEqual({
      what: 'Ball fence',
      why: expect.stringMatching(/^Needs three soft practice balls|promises less/),
    });
    expect(offer.cautions).toEqual(expect.arrayContaining([...everyDrill]));
  });

  it('adds a drill that supports the first where there is time for two', async () => {
    const { ctx, id } = await opened({ daysPerWeek: 3, minutesPerDay: 30, place: 'grass' });
    const { plan: offered, secondName } = await offerProgramme({ ctx, input: { id, cause: 'hang-back' } });
    expect(offered?.second).toEqual({ drillId: 'step-through', minutes: 15 });
    expect(secondName).toBe('Step through');
    await saveReply({ ctx, input: draft(id, 0, { plan: offered }) });
    const { replyId } = await sent(ctx, id);
    const { programme, cautions } = await readReply({ ctx, input: { id: replyId } });
    expect(programme).toMatchObject({
      session: { daysPerWeek: 3, minutes: offered?.minutesPerDay },
      second: { minutes: 15, drill: { id: 'step-through' } },
    });
    expect(programme?.second?.drill.cautions).toEqual(expect.arrayContaining([...everyDrill]));
    expect(cautions).toEqual(expect.arrayContaining([...everyDrill]));
  });

  it('strikes no ball where there are none', async () => {
    const { ctx, id } = await opened({ balls: 0, place: 'home' });
    const { plan: offered } = await offerProgramme({ ctx, input: { id, cause: 'hang-back' } });
    await saveReply({ ctx, input: draft(id, 0, { plan: offered }) });
    const { replyId } = await sent(ctx, id);
    const { programme } = await readReply({ ctx, input: { id: replyId } });
    expect(programme?.drill.ladder.map(({ ball }) => ball)).not.toContain(true);
  });

  it('spares what hurts, and so does sending', async () => {
    const { ctx, id } = await opened({ pains: ['knee-pain', 'hip-pain'], place: 'grass' });
    const offer = await offerProgramme({ ctx, input: { id, cause: 'hang-back' } });
    expect(offer.leftOut).toContainEqual({
      what: 'Front-foot start',
      why: expect.stringMatching(/^Not with/),
    });
    expect(offer.plan?.drillId).not.toBe('lead-side-start');
    const strains = { ...plan, drillId: 'lead-side-start', place: 'grass' as const };
    await saveReply({ ctx, input: draft(id, 0, { plan: strains }) });
    await expect(sendReply({ ctx, input: { id } })).rejects.toMatchObject({ code: 'bad-request' });
  });

  it('is for the chosen cause where none is named, and for one there is', async () => {
    const { ctx, id } = await opened();
    await expect(offerProgramme({ ctx, input: { id } })).rejects.toMatchObject({ code: 'bad-request' });
    await expect(offerProgramme({ ctx, input: { id, cause: 'the-weather' } })).rejects.toMatchObject({
      code: 'bad-request',
    });
    await chooseDiagnosis({ ctx, input: { id, fault: 'fat', cause: 'sway-away', setUpTicks: [] } });
    expect((await offerProgramme({ ctx, input: { id } })).cause).toBe('sway-away');
  });

  it('helps a likely set-up cause as well, or names it as a tick', async () => {
    const { ctx, id, clipId } = await opened();
    const marks = plantedMarks({ gripEndAddress: -130 }).map((mark) => ({ ...mark }));
    await saveMarks({ ctx, input: { id, clipId, version: 0, marks, observations: [] } });
    const offer = await offerProgramme({ ctx, input: { id, cause: 'sway-away' } });
    const handle = causeById('handle-back');
    const tick = offer.leftOut.find(({ what }) => what === handle.name)?.why;
    const helped = [offer.plan?.drillId, offer.plan?.second?.drillId].some(
      (drill) => drill !== undefined && handle.drills.includes(drill),
    );
    expect(helped || tick === 'Set right with a tick, without a drill of its own.').toBe(true);
  });
});

describe('a plan', () => {
  it('adds no drill for another movement', async () => {
    const { ctx, id } = await opened({ place: 'grass' });
    const second = { drillId: 'cover-outside', minutes: 10 };
    await saveReply({ ctx, input: draft(id, 0, { plan: { ...plan, second } }) });
    await expect(sendReply({ ctx, input: { id } })).rejects.toMatchObject({ code: 'bad-request' });
  });

  it('that stops fitting on its way stays a draft: no drill goes out that strains what hurts', async () => {
    const { ctx, id, student } = await opened({ place: 'grass' });
    const strains = { ...plan, drillId: 'lead-side-start', place: 'grass' as const };
    await saveReply({ ctx, input: draft(id, 0, { plan: strains }) });
    await sendReply({ ctx, input: { id } });
    await withAcademy(test.db, ctx.academyId, (tx) =>
      tx.student.update({
        where: { academyId_id: { academyId: ctx.academyId, id: student.id } },
        data: { pains: ['hip-pain'] },
      }),
    );
    const reply = (await openReview({ ctx, input: { id } })).reply;
    world.now = new Date(world.now.getTime() + secondThoughtsMs);
    const input = { replyId: reply?.id ?? '' };
    expect(await finishReply({ ctx: world.contextOf(ctx.academyId), input })).toEqual({ sent: false });
    expect((await openReview({ ctx, input: { id } })).reply?.status).toBe('draft');
  });
});

describe('more than one movement and three ticks', () => {
  const ticks = ['grip', 'handle', 'hips', 'ball'] as const;

  it('is asked about once, then allowed and recorded', async () => {
    const { ctx, id, student } = await opened();
    const more = { moreCauses: ['sway-away'], setUpTicks: [...ticks] };
    for (const one of [{ moreCauses: more.moreCauses }, { setUpTicks: more.setUpTicks }]) {
      await expect(saveReply({ ctx, input: draft(id, 0, one) })).rejects.toMatchObject({
        code: 'too-much-at-once',
      });
    }
    const saved = await saveReply({ ctx, input: draft(id, 0, { ...more, moreAgreed: true }) });
    expect(saved).toMatchObject({ moreCauses: ['sway-away'], moreAgreedAt: factoryNow.toISOString() });
    expect((await openReview({ ctx, input: { id } })).reply).toEqual(saved);
    world.now = new Date(factoryNow.getTime() + 1_000);
    const again = await saveReply({ ctx, input: draft(id, 1, { ...more, moreAgreed: true }) });
    expect(again.moreAgreedAt).toBe(factoryNow.toISOString());
    expect(await audits(ctx, 'agree-to-more')).toMatchObject([
      { detail: { causes: ['sway-away'], ticks: 4 } },
    ]);
    const { replyId } = await sent(ctx, id);
    const read = await readReply({ ctx: actingStudent(world, student), input: { id: replyId } });
    expect(read.more).toHaveLength(1);
    expect(read.more[0]).not.toMatch(/\{/);
  });

  it('is forgotten when the reply is one thing again', async () => {
    const { ctx, id } = await opened();
    await saveReply({ ctx, input: draft(id, 0, { setUpTicks: [...ticks], moreAgreed: true }) });
    expect(await saveReply({ ctx, input: draft(id, 1, { moreAgreed: true }) })).toMatchObject({
      ...{ moreCauses: [], moreAgreedAt: null },
    });
  });

  it('is of causes there are, beside a first one', async () => {
    const { ctx, id } = await opened();
    for (const wrong of [
      { moreCauses: ['the-weather'], moreAgreed: true },
      { moreCauses: ['sway-away'], moreAgreed: true, cause: null, plan: null },
    ]) {
      await expect(saveReply({ ctx, input: draft(id, 0, wrong) })).rejects.toMatchObject({
        code: 'bad-request',
      });
    }
    const same = { moreCauses: ['hang-back'] };
    expect(await saveReply({ ctx, input: draft(id, 0, same) })).toMatchObject({ moreCauses: [] });
  });
});

describe('two coaches, or a swing that is gone', () => {
  const withdraw = (ctx: Context, id: string) =>
    withAcademy(test.db, ctx.academyId, (tx) =>
      tx.submission.update({
        where: { academyId_id: { academyId: ctx.academyId, id } },
        data: { status: 'withdrawn' },
      }),
    );

  it('only who has claimed it saves and sends; of two tabs of one coach the second is told', async () => {
    const { ctx, id } = await opened();
    const other = actingStaff(world, await createMembership(test.db, { academyId: ctx.academyId }));
    await expect(saveReply({ ctx: other, input: draft(id, 0) })).rejects.toMatchObject({
      code: 'already-claimed',
    });
    const tries = await Promise.allSettled([
      saveReply({ ctx, input: draft(id, 0, { words: 'One.' }) }),
      saveReply({ ctx, input: draft(id, 0, { words: 'Two.' }) }),
    ]);
    expect(tries.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
    const refused = tries.find((one) => one.status === 'rejected');
    expect(refused).toMatchObject({ reason: { code: 'changed-meanwhile' } });
    const sends = await Promise.allSettled([
      sendReply({ ctx, input: { id } }),
      sendReply({ ctx, input: { id } }),
      sendReply({ ctx: other, input: { id } }),
    ]);
    expect(sends.map(({ status }) => status)).toEqual(['fulfilled', 'fulfilled', 'rejected']);
    expect(await audits(ctx, 'send-reply')).toHaveLength(1);
  });

  it('a withdrawn swing takes no reply, neither a draft nor one on its way', async () => {
    const { ctx, id } = await opened();
    await saveReply({ ctx, input: draft(id, 0) });
    const { id: replyId } = await sendReply({ ctx, input: { id } });
    await withdraw(ctx, id);
    world.now = new Date(world.now.getTime() + secondThoughtsMs);
    const system = world.contextOf(ctx.academyId);
    expect(await finishReply({ ctx: system, input: { replyId } })).toEqual({ sent: false });
    const late = [() => saveReply({ ctx, input: draft(id, 2) }), () => sendReply({ ctx, input: { id } })];
    for (const write of late) {
      await expect(write()).rejects.toMatchObject({ code: 'wrong-state' });
    }
    await expect(readReply({ ctx, input: { id: replyId } })).rejects.toMatchObject({ code: 'not-found' });
  });
});
