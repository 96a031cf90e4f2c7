import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff } from '@ballfirst/testing/acting';
import {
  createConcern,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createEntry, createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { claimConcern } from './claim-concern.ts';
import { closeConcern } from './close-concern.ts';
import { raisePain } from './raise-pain.ts';
import { raiseTrialEndings } from './raise-trial-endings.ts';
import { readInbox } from './read-inbox.ts';
import { releaseConcern } from './release-concern.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const later = (hours: number): Date => new Date(factoryNow.getTime() + hours * 3_600_000);
const staffed = async () => {
  const coach = await createMembership(test.db);
  const { academyId } = coach;
  const second = await createMembership(test.db, { academyId, name: 'Another' });
  return {
    academyId,
    ctx: actingStaff(world, coach),
    other: actingStaff(world, second),
    system: world.contextOf(academyId),
  };
};
type Staffed = Awaited<ReturnType<typeof staffed>>;
const inboxOf = async ({ ctx }: Pick<Staffed, 'ctx'>) =>
  (await readInbox({ ctx, input: { limit: 50 } })).items;

describe('a concern', () => {
  it('is taken by one of two, given back, and closed with what was done', async () => {
    const { academyId, ctx, other } = await staffed();
    const { id } = await createConcern(test.db, { academyId });
    const tried = await Promise.allSettled(
      [ctx, other].map((one) => claimConcern({ ctx: one, input: { id } })),
    );
    expect(tried.map(({ status }) => status).toSorted()).toEqual(['fulfilled', 'rejected']);
    const [holder, stranger] = tried[0]?.status === 'fulfilled' ? [ctx, other] : [other, ctx];
    const close = (by: typeof ctx, outcome: 'spoke' | 'wrote') =>
      closeConcern({ ctx: by, input: { id, outcome } });
    await expect(close(stranger, 'wrote')).rejects.toMatchObject({ code: 'already-claimed' });
    await expect(releaseConcern({ ctx: stranger, input: { id } })).rejects.toMatchObject({
      code: 'already-claimed',
    });
    expect((await releaseConcern({ ctx: holder, input: { id } })).claim).toBeNull();
    expect(await close(stranger, 'spoke')).toMatchObject({ status: 'closed', outcome: 'spoke' });
    expect(await close(holder, 'wrote')).toMatchObject({ outcome: 'spoke' });
    await expect(claimConcern({ ctx, input: { id } })).rejects.toMatchObject({ code: 'wrong-state' });
    expect(await inboxOf({ ctx })).toEqual([]);
  });

  it('is free again when its claim has run out', async () => {
    const { academyId, ctx, other } = await staffed();
    const { id } = await createConcern(test.db, { academyId });
    await claimConcern({ ctx, input: { id } });
    world.now = later(0.5);
    expect((await claimConcern({ ctx: other, input: { id } })).claim?.name).toBe('Another');
  });
});

describe('a pain told while practising', () => {
  it('stands above every swing, once however often its job runs', async () => {
    const at = await staffed();
    const { academyId, system } = at;
    const student = await createStudent(test.db, { academyId });
    await createSubmission(test.db, { academyId, priorityKey: later(-48), answerBy: later(-48) });
    const programme = await createProgramme(test.db, { academyId, studentId: student.id });
    const entry = await createEntry(test.db, programme, { pain: 'worse' });
    const input = { eventId: newId(), entryId: entry.id };
    const runs = [1, 2, 3].map(() => raisePain({ ctx: system, input }));
    const raised = (await Promise.all(runs)).filter(({ concernId }) => concernId !== null);
    expect(raised).toHaveLength(1);
    const [first, second] = await inboxOf(at);
    expect(first).toMatchObject({ kind: 'pain', pain: 'worse', block: 'pain', id: raised[0]?.concernId });
    expect(first?.reasons[0]).toEqual({ kind: 'pain', pain: 'worse' });
    expect(first?.answerBy).toBe(later(4).toISOString());
    expect(first?.last).toMatchObject({ drillId: 'flat-towel', cause: 'thrown-early' });
    expect(second).toMatchObject({ kind: 'swing', block: 'late' });
  });

  it('is nothing where none was told', async () => {
    const { academyId, system } = await staffed();
    const student = await createStudent(test.db, { academyId });
    const programme = await createProgramme(test.db, { academyId, studentId: student.id });
    const entry = await createEntry(test.db, programme);
    const input = { eventId: newId(), entryId: entry.id };
    expect(await raisePain({ ctx: system, input })).toEqual({ concernId: null });
  });
});

describe('a trial that ends unheard', () => {
  const ending = (academyId: string, hours: number) =>
    createStudent(test.db, { academyId, trialStartedAt: later(-24 * 12), trialEndsAt: later(hours) });

  it('comes up two working days before its end, once a trial', async () => {
    const at = await staffed();
    const { academyId, ctx, system } = at;
    const soon = await ending(academyId, 30);
    await ending(academyId, 24 * 5);
    // Work ends at five: two working days of eight hours from Tuesday at nine end on Wednesday at five.
    expect(await raiseTrialEndings({ ctx: system })).toEqual({ raised: 1 });
    const items = await inboxOf(at);
    expect(items.map(({ kind, student }) => [kind, student.id])).toEqual([['trial-ending', soon.id]]);
    expect(items[0]?.reasons[0]).toMatchObject({ kind: 'trial-ending', endsAt: later(30).toISOString() });
    expect(await raiseTrialEndings({ ctx: system })).toEqual({ raised: 0 });
    await closeConcern({ ctx, input: { id: items[0]?.id ?? '', outcome: 'spoke' } });
    expect(await raiseTrialEndings({ ctx: system })).toEqual({ raised: 0 });
  });

  it('is none where a reply was opened, where a swing waits, or where the trial is over', async () => {
    const { academyId, system } = await staffed();
    const heard = await ending(academyId, 20);
    const programme = await createProgramme(test.db, {
      academyId,
      studentId: heard.id,
      submissionId: (
        await createSubmission(test.db, {
          academyId,
          studentId: heard.id,
          status: 'answered',
          answeredAt: factoryNow,
        })
      ).id,
    });
    const reply = await createReply(test.db, programme, { sentAt: later(-48), readAt: null });
    const waiting = await ending(academyId, 20);
    await createSubmission(test.db, { academyId, studentId: waiting.id });
    const over = await ending(academyId, 20);
    await withAcademy(test.db, academyId, async (tx) => {
      const key = (id: string) => ({ academyId_id: { academyId, id } });
      await tx.student.update({ where: key(over.id), data: { standing: 'lapsed' } });
      await tx.reply.update({ where: key(reply.id), data: { readAt: later(-24) } });
    });
    expect(await raiseTrialEndings({ ctx: system })).toEqual({ raised: 0 });
    await withAcademy(test.db, academyId, (tx) =>
      tx.reply.update({ where: { academyId_id: { academyId, id: reply.id } }, data: { readAt: null } }),
    );
    expect(await raiseTrialEndings({ ctx: system })).toEqual({ raised: 1 });
  });
});
