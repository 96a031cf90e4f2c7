import { withAcademy } from '@ballfirst/db/with-academy';
import { readingsOf } from '@ballfirst/diagnosis/evidence-of';
import { rank } from '@ballfirst/diagnosis/rank';
import { weightOf } from '@ballfirst/diagnosis/weights';
import { causeById, causes } from '@ballfirst/library/causes';
import type { Mark } from '@ballfirst/swing/marks/marks';
import { plantedMarks, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { actingStaff } from '@ballfirst/testing/acting';
import {
  createAcademy,
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
import { offerProgramme } from '../practice/offer-programme.ts';
import { chooseDiagnosis } from '../review/choose-diagnosis.ts';
import { measureMarks } from '../review/measure-marks.ts';
import { openReview } from '../review/open-review.ts';
import { readDiagnosis } from '../review/read-diagnosis.ts';
import { saveMarks } from '../review/save-marks.ts';
import { showOrder } from '../review/show-order.ts';
import { idOfTurn } from './id-of-turn.ts';
import { readLearning } from './read-learning.ts';
import { resetLearning } from './reset-learning.ts';
import { setLearning } from './set-learning.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const dayBefore = new Date(factoryNow.getTime() - 86_400_000);
const { widthPx, heightPx, frameTimesS } = plantedPicture;
const size = { widthPx, heightPx, frames: frameTimesS.length, fps: 60 };

/** An academy that learns since yesterday, with a manager and a coach. */
const house = async (learningSince: Date | null = dayBefore) => {
  const { id: academyId } = await createAcademy(test.db, { learningSince });
  const coach = actingStaff(world, await createMembership(test.db, { academyId, name: 'Ada Reed' }));
  const manager = actingStaff(world, await createMembership(test.db, { academyId, role: 'manager' }));
  return { academyId, coach, manager };
};
type Given = Parameters<typeof createSubmission>[1] & { clip?: 'ready' | 'none' };

/** A claimed swing of the academy on its blind turn, unless told otherwise. */
const swing = async (coach: Context, given: Given = {}) => {
  const { clip = 'ready', ...row } = given;
  const { academyId } = coach;
  const { id: studentId } = await createStudent(test.db, { academyId });
  const { id } = await createSubmission(test.db, { id: idOfTurn(true), academyId, studentId, ...row });
  const clipId =
    clip === 'ready'
      ? (await createClip(test.db, { academyId, studentId, submissionId: id, ...size })).id
      : '';
  await claimSubmission({ ctx: coach, input: { id } });
  return { id, clipId };
};
const open = (ctx: Context, id: string) => openReview({ ctx, input: { id } });
const choose = (ctx: Context, id: string, cause: string) =>
  chooseDiagnosis({ ctx, input: { id, fault: 'fat', cause, setUpTicks: [] } });
const plain = (marks: readonly Mark[]) => marks.map((mark) => ({ ...mark }));
/** Marks that speak for `handle-back` and nothing else. */
const handleBack = plain(plantedMarks({ gripEndAddress: -130 }));
const mark = (ctx: Context, { id, clipId }: { id: string; clipId: string }) =>
  saveMarks({ ctx, input: { id, clipId, version: 0, marks: handleBack, observations: [] } });
const rowOf = async (ctx: Context, cause: string) =>
  (await readLearning({ ctx, input: {} })).faults[0]?.causes.find(({ causeId }) => causeId === cause);

describe('a blind turn', () => {
  it('holds the order back wherever it could be read, until a cause is named', async () => {
    const { coach } = await house();
    const { id, clipId } = await swing(coach);
    const saved = await mark(coach, { id, clipId });
    const review = await open(coach, id);
    expect(review).toMatchObject({ heldBack: true, named: null });
    const { evidence } = await readDiagnosis({ ctx: coach, input: { id } });
    for (const one of [saved.evidence, review.evidence[0], evidence[0]]) {
      expect(one).toMatchObject({ causes: [], first: null, next: null });
      expect(one?.readings.length).toBeGreaterThanOrEqual(8);
      expect(JSON.stringify(one)).not.toContain('handle-back');
    }
    const offer = await offerProgramme({ ctx: coach, input: { id, cause: 'dip' } });
    expect(JSON.stringify(offer.leftOut)).not.toMatch(/handle/i);

    expect(await choose(coach, id, 'hang-back')).toMatchObject({ blind: true, overruled: true });
    const after = await open(coach, id);
    expect(after).toMatchObject({
      ...{ heldBack: false, named: 'hang-back' },
      diagnosis: { blind: true, chosenCause: 'hang-back' },
    });
    expect(after.evidence[0]?.causes[0]?.causeId).toBe('handle-back');
    // The order is known now: another choice is not blind, and what was named stays named.
    expect(await choose(coach, id, 'handle-back')).toMatchObject({ blind: false, overruled: false });
    expect(await open(coach, id)).toMatchObject({ named: 'hang-back', diagnosis: { blind: false } });
  });

  it.each<[string, Given, Date | null]>([
    ['where the academy does not learn', {}, null],
    ['on another swing', { id: idOfTurn(false) }, dayBefore],
    ['where pain comes first', { pain: 'new' }, dayBefore],
    ['where pain was read', { pain: 'worse', painSeenAt: factoryNow }, dayBefore],
    ['where no clip can be read', { clip: 'none' }, dayBefore],
    ['for a swing sent before', { sentAt: new Date(dayBefore.getTime() - 1) }, dayBefore],
    ['once the order was asked for', { orderShownAt: factoryNow }, dayBefore],
  ])('does not come %s', async (_, given, since) => {
    const { coach } = await house(since);
    const { id } = await swing(coach, given);
    expect(await open(coach, id)).toMatchObject({ heldBack: false });
    expect(await choose(coach, id, 'hang-back')).toMatchObject({ blind: false });
  });

  it('shows the order to a coach who cannot tell, and is not counted', async () => {
    const { coach, manager, academyId } = await house();
    const { id, clipId } = await swing(coach);
    await mark(coach, { id, clipId });
    await expect(showOrder({ ctx: manager, input: { id } })).rejects.toMatchObject({
      code: 'already-claimed',
    });
    for (let asked = 0; asked < 2; asked += 1) {
      expect(await showOrder({ ctx: coach, input: { id } })).toEqual({ heldBack: false });
    }
    expect((await open(coach, id)).evidence[0]?.first).toBe('handle-back');
    expect(await choose(coach, id, 'handle-back')).toMatchObject({ blind: false, overruled: false });
    expect(await readLearning({ ctx: coach, input: {} })).toMatchObject({
      blind: 0,
      overruled: 0,
      faults: [],
    });
    const shown = await withAcademy(test.db, academyId, (tx) =>
      tx.auditEntry.count({ where: { academyId, action: 'show-order' } }),
    );
    expect(shown).toBe(1);
  });
});

describe('what counts', () => {
  it('is one choice a swing: the blind one, else the last that goes against the order', async () => {
    const { coach } = await house();
    const blind = await swing(coach);
    await mark(coach, blind);
    await choose(coach, blind.id, 'handle-back');
    await choose(coach, blind.id, 'hang-back');
    expect(await rowOf(coach, 'handle-back')).toMatchObject({ chosen: 1, seen: 1 });
    expect(await rowOf(coach, 'hang-back')).toMatchObject({ chosen: 0, seen: 1 });

    const told = await swing(coach, { id: idOfTurn(false) });
    await mark(coach, told);
    await choose(coach, told.id, 'dip');
    await choose(coach, told.id, 'hang-back');
    expect(await readLearning({ ctx: coach, input: {} })).toMatchObject({ blind: 1, overruled: 1 });
    expect(await rowOf(coach, 'hang-back')).toMatchObject({ chosen: 1, seen: 2 });
    expect(await rowOf(coach, 'dip')).toMatchObject({ chosen: 0, seen: 2 });
    // Whoever comes round to the order has followed it.
    await choose(coach, told.id, 'handle-back');
    expect(await readLearning({ ctx: coach, input: {} })).toMatchObject({ blind: 1, overruled: 0 });
  });

  it('leaves out what the views could not show', async () => {
    const { coach } = await house();
    const { id } = await swing(coach);
    await choose(coach, id, 'hang-back');
    const rows = (await readLearning({ ctx: coach, input: {} })).faults[0]?.causes ?? [];
    for (const { causeId } of rows) expect(causeById(causeId).unseen['face-on']).toBeUndefined();
    expect(rows.map(({ causeId }) => causeId)).not.toContain('in-to-out');
  });

  it('is of one academy alone', async () => {
    const [one, other] = [await house(), await house()];
    const { id } = await swing(one.coach);
    await choose(one.coach, id, 'hang-back');
    expect((await readLearning({ ctx: one.coach, input: {} })).blind).toBe(1);
    expect((await readLearning({ ctx: other.coach, input: {} })).blind).toBe(0);
    expect((await open(other.coach, (await swing(other.coach)).id)).baseRates).toEqual({});
  });
});

describe('the rates that come of it', () => {
  /** Six swings named blind. */
  const taught = async (cause = 'hang-back') => {
    const here = await house();
    for (let turn = 0; turn < 6; turn += 1) {
      await choose(here.coach, (await swing(here.coach)).id, cause);
    }
    return here;
  };

  // By the formula: the odds of q change by (6 q + named) / (6 q + expected).
  it('rise where a cause is named more often than the library expects, and fall where less', async () => {
    const { coach } = await taught();
    const visible = causes.filter(({ brings, unseen }) => brings.fat && unseen['face-on'] === undefined);
    const brought = (id: string) => causeById(id).baseRate * weightOf[causeById(id).brings.fat ?? 1];
    const whole = visible.reduce((sum, { id }) => sum + brought(id), 0);
    for (const [cause, chosen] of [
      ['hang-back', 6],
      ['dip', 0],
    ] as const) {
      const { baseRate } = causeById(cause);
      const row = await rowOf(coach, cause);
      const expected = (6 * brought(cause)) / whole;
      const odds = ((baseRate / (1 - baseRate)) * (6 * baseRate + chosen)) / (6 * baseRate + expected);
      expect(row).toMatchObject({ chosen, seen: 6, libraryRate: baseRate });
      expect(row?.expected).toBeCloseTo(expected, 12);
      expect(row?.rate).toBeCloseTo(odds / (1 + odds), 12);
    }
  });

  it('go into every ranking, and are kept with a diagnosis so that it comes out as it did', async () => {
    const { coach, academyId } = await taught();
    const { id, clipId } = await swing(coach, { id: idOfTurn(false) });
    const saved = await mark(coach, { id, clipId });
    const review = await open(coach, id);
    expect(review.baseRates['hang-back']).toBeGreaterThan(causeById('hang-back').baseRate);
    expect(review.evidence).toEqual([{ clipId, ...saved.evidence }]);
    const measured = await measureMarks({
      ctx: coach,
      input: {
        ...{ fault: 'fat', marks: handleBack, observations: [] },
        picture: { widthPx, heightPx, frameTimesS: [...frameTimesS] },
        setting: { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' },
      },
    });
    expect(measured).toEqual(saved.evidence);

    const chosen = await choose(coach, id, 'handle-back');
    // What is learned afterwards changes nothing of what was stored.
    await choose(coach, (await swing(coach)).id, 'dip');
    const stored = await withAcademy(test.db, academyId, (tx) =>
      tx.diagnosis.findUniqueOrThrow({ where: { academyId_id: { academyId, id: chosen.id } } }),
    );
    const { baseRates, clips } = stored.inputs as unknown as {
      baseRates: Record<string, number>;
      clips: { setting: Parameters<typeof readingsOf>[0]['setting']; marks: Mark[] }[];
    };
    const [clip] = clips;
    if (clip === undefined) throw new Error('no clip was kept');
    const { readings } = readingsOf({ ...clip, observations: [], picture: plantedPicture });
    const again = (rates: Record<string, number>) =>
      rank({ fault: 'fat', readings, observations: [], causes, baseRates: rates }).map(
        ({ causeId, probability, share, score }) => ({ causeId, probability, share, score }),
      );
    expect(again(baseRates)).toEqual(stored.ranking);
    expect(again({})).not.toEqual(stored.ranking);
  });

  it('hold while the academy learns, and begin anew when the manager says so', async () => {
    const { coach, manager, academyId } = await taught();
    const ratesNow = async () =>
      (await open(coach, (await swing(coach, { id: idOfTurn(false) })).id)).baseRates;
    for (const ask of [
      () => setLearning({ ctx: coach, input: { on: false } }),
      () => resetLearning({ ctx: coach, input: {} }),
    ]) {
      await expect(ask()).rejects.toMatchObject({ code: 'not-allowed' });
    }
    for (let said = 0; said < 2; said += 1) {
      expect(await setLearning({ ctx: manager, input: { on: false } })).toMatchObject({
        on: false,
        blind: 6,
      });
    }
    expect(await ratesNow()).toEqual({});
    // Off, nothing is added.
    await choose(coach, (await swing(coach)).id, 'dip');
    expect(await setLearning({ ctx: manager, input: { on: true } })).toMatchObject({
      ...{ on: true, blind: 6, overruled: 0, since: factoryNow.toISOString() },
    });
    expect(Object.keys(await ratesNow())).toContain('hang-back');

    expect(await resetLearning({ ctx: manager, input: {} })).toMatchObject({
      on: true,
      blind: 0,
      faults: [],
    });
    expect(await ratesNow()).toEqual({});
    world.now = new Date(factoryNow.getTime() + 60_000);
    const later = actingStaff(world, await createMembership(test.db, { academyId }));
    await choose(later, (await swing(later, { sentAt: world.now })).id, 'dip');
    expect(await rowOf(later, 'dip')).toMatchObject({ chosen: 1, seen: 1 });
    const told = await withAcademy(test.db, academyId, (tx) =>
      tx.auditEntry.findMany({
        where: { academyId, action: { in: ['set-learning', 'reset-learning'] } },
        select: { action: true, detail: true },
      }),
    );
    expect(told).toHaveLength(3);
    expect(told).toContainEqual({ action: 'reset-learning', detail: { blind: 6, overruled: 0 } });
  });
});
