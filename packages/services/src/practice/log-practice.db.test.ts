import { takeOutbox } from '@ballfirst/db/crossings/take-outbox';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { painHoldSentence } from '@ballfirst/library/cautions';
import { actingStudent } from '@ballfirst/testing/acting';
import { createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Context } from '../context.ts';
import { logPractice } from './log-practice.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const practising = async (given: Partial<Parameters<typeof createProgramme>[1]> = {}, zone = 'UTC') => {
  const member = await createMembership(test.db, { role: 'student', name: 'A student', zone });
  const { academyId } = member;
  const student = await createStudent(test.db, { academyId, membershipId: member.id });
  const programme = await createProgramme(test.db, { academyId, studentId: student.id, ...given });
  const ctx = actingStudent(world, student);
  const log = (entry: Partial<Parameters<typeof logPractice>[0]['input']> = {}, as: Context = ctx) =>
    logPractice({
      ctx: as,
      input: {
        id: programme.id,
        rung: 'rehearsal',
        balls: 10,
        clean: 7,
        filmed: false,
        pain: 'none',
        ...entry,
      },
    });
  return { academyId, student, programme, ctx, log };
};

const kindsOf = async (academyId: string): Promise<string[]> => {
  const rows = await takeOutbox(test.db, {
    limit: 500,
    now: new Date(factoryNow.getTime() + 1000),
    retakeAfterSeconds: 0,
  });
  return rows.filter((row) => row.academyId === academyId).map(({ kind }) => kind);
};
const entriesOf = (academyId: string) =>
  withAcademy(test.db, academyId, (tx) => tx.practiceEntry.findMany({ where: { academyId } }));

describe('logging practice', () => {
  it('passes a slow rung on the first day at six of ten, and moves the programme on', async () => {
    const { log, academyId } = await practising();
    const { entry, programme } = await log({ clean: 6 });
    expect(entry).toMatchObject({ verdict: 'passed', localDate: '2026-03-10', clean: 6 });
    expect(entry.words).toContain('Passed');
    expect(programme).toMatchObject({ rung: 'brush', status: 'open' });
    expect(programme.drill.cautions.length).toBeGreaterThanOrEqual(3);
    expect(await kindsOf(academyId)).toEqual(['practice.logged']);
  });

  it('stays where the balls do not decide, and steps back after two failed tries', async () => {
    const { log } = await practising();
    expect((await log({ clean: 6 })).programme.rung).toBe('brush');
    const stay = await log({ rung: 'brush', clean: 5 });
    expect(stay).toMatchObject({ entry: { verdict: 'stay' }, programme: { rung: 'brush' } });
    await log({ rung: 'brush', clean: 0 });
    const back = await log({ rung: 'brush', clean: 0 });
    expect(back).toMatchObject({ entry: { verdict: 'back' }, programme: { rung: 'rehearsal' } });
  });

  it('ends the programme with the last rung that is sound at the place', async () => {
    const { log } = await practising();
    await log();
    await log({ rung: 'brush' });
    const last = await log({ rung: 'hip-high', clean: 10 });
    expect(last).toMatchObject({ entry: { verdict: 'passed' }, programme: { status: 'done' } });
    await expect(log({ rung: 'hip-high' })).rejects.toMatchObject({ code: 'wrong-state' });
  });

  it('counts on the calendar day of the student', async () => {
    world.now = new Date('2026-03-10T23:30:00Z');
    const { log } = await practising({}, 'Europe/Stockholm');
    expect((await log()).entry.localDate).toBe('2026-03-11');
  });

  it('holds at once at a pain that is new or worse, and takes no more', async () => {
    for (const pain of ['new', 'worse'] as const) {
      const { log, academyId } = await practising();
      const { entry, programme } = await log({ pain, clean: 10 });
      expect(entry).toMatchObject({ verdict: 'hold', words: painHoldSentence });
      expect(programme).toMatchObject({ status: 'held', holdReason: painHoldSentence, rung: 'rehearsal' });
      expect((await kindsOf(academyId)).sort()).toEqual(['practice.held', 'practice.logged']);
      await expect(log()).rejects.toMatchObject({ code: 'practice-held' });
      expect(await entriesOf(academyId)).toHaveLength(1);
    }
  });

  it('takes the second drill by its own ladder and gate; the programme lives by the first', async () => {
    const second = { secondDrillId: 'line-brush', secondMinutes: 10 };
    const { log, academyId } = await practising(second);
    const began = await log({ drillId: 'line-brush', clean: 6 });
    expect(began.entry).toMatchObject({ drillId: 'line-brush', verdict: 'passed' });
    expect(began.programme).toMatchObject({
      rung: 'rehearsal',
      status: 'open',
      second: { rung: 'brush', done: false },
    });
    const first = await log({ drillId: 'flat-towel', clean: 6 });
    expect(first.programme).toMatchObject({ rung: 'brush', second: { rung: 'brush' } });
    expect(first.programme.entries.map(({ drillId }) => drillId).sort()).toEqual([
      'flat-towel',
      'line-brush',
    ]);
    // Two failed tries of the second step it back; the first stays where it is.
    await log({ drillId: 'line-brush', rung: 'brush', clean: 0 });
    const back = await log({ drillId: 'line-brush', rung: 'brush', clean: 0 });
    expect(back).toMatchObject({
      entry: { verdict: 'back' },
      programme: { rung: 'brush', second: { rung: 'rehearsal' } },
    });
    expect((await entriesOf(academyId)).map((entry) => entry.second).sort()).toEqual([
      false,
      true,
      true,
      true,
    ]);
    expect(back.programme.second?.drill.cautions.length).toBeGreaterThanOrEqual(3);
  });

  it('ends nothing with the last rung of the second drill, and everything with that of the first', async () => {
    const { log } = await practising({ secondDrillId: 'set-up-photo', secondMinutes: 5 });
    const { programme: before } = await log({ drillId: 'set-up-photo', balls: 5, clean: 5 });
    const rungs = before.second?.drill.ladder ?? [];
    let last = before;
    for (const { id, balls, filmed } of rungs.slice(1)) {
      last = (await log({ drillId: 'set-up-photo', rung: id, balls, clean: balls, filmed })).programme;
    }
    expect(last).toMatchObject({ status: 'open', second: { done: true } });
    expect(last.entries[0]?.words).toContain('keep it to begin your sessions with');
    await log();
    await log({ rung: 'brush' });
    expect((await log({ rung: 'hip-high', clean: 10 })).programme.status).toBe('done');
    await expect(log({ drillId: 'set-up-photo' })).rejects.toMatchObject({ code: 'wrong-state' });
  });

  it('holds both drills at a pain in either, and refuses the second what it refuses the first', async () => {
    const { log, academyId } = await practising({ secondDrillId: 'line-brush', secondMinutes: 10 });
    const of = { drillId: 'line-brush' };
    await expect(log({ ...of, balls: 5, clean: 6 })).rejects.toMatchObject({ code: 'practice-not-possible' });
    await expect(log({ ...of, rung: 'no-such' })).rejects.toMatchObject({ code: 'bad-request' });
    await expect(log({ drillId: 'ball-fence' })).rejects.toMatchObject({ code: 'bad-request' });
    expect(await entriesOf(academyId)).toEqual([]);
    const { programme } = await log({ ...of, pain: 'new' });
    expect(programme).toMatchObject({ status: 'held', rung: 'rehearsal' });
    for (const drillId of ['line-brush', 'flat-towel']) {
      await expect(log({ drillId })).rejects.toMatchObject({ code: 'practice-held' });
    }
  });

  it('refuses more clean ones than balls, and a rung that is not of the programme', async () => {
    const { log, academyId } = await practising();
    await expect(log({ balls: 5, clean: 6 })).rejects.toMatchObject({ code: 'practice-not-possible' });
    await expect(log({ rung: 'full' })).rejects.toMatchObject({ code: 'bad-request' });
    expect(await entriesOf(academyId)).toEqual([]);
  });

  it('happens once for one key, sent twice in a row or at the same time', async () => {
    const { log, ctx, academyId } = await practising();
    const once = { owner: 'membership', key: newId(), requestHash: 'a' };
    const both = await Promise.all([log({}, { ...ctx, once }), log({}, { ...ctx, once })]);
    const again = await log({}, { ...ctx, once });
    expect(both).toEqual([again, again]);
    expect(await entriesOf(academyId)).toHaveLength(1);
    await expect(log({}, { ...ctx, once: { ...once, requestHash: 'b' } })).rejects.toMatchObject({
      code: 'key-used-otherwise',
    });
  });

  it('is only for the own programme: another student, another academy and none are one answer', async () => {
    const { log, academyId } = await practising();
    const other = await createStudent(test.db, { academyId });
    const astray = await createStudent(test.db);
    for (const as of [other, astray]) {
      await expect(log({}, actingStudent(world, as))).rejects.toMatchObject({ code: 'not-found' });
    }
    await expect(log({ id: newId() })).rejects.toMatchObject({ code: 'not-found' });
  });
});
