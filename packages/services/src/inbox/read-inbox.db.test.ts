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
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { readInbox } from './read-inbox.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
  world = systemWorld(test.db, factoryNow);
});
afterAll(() => test.close());

const now = factoryNow;
const later = (hours: number): Date => new Date(now.getTime() + hours * 3_600_000);

const pageThrough = async (ctx: Context, limit: number): Promise<Reply<'readInbox'>['items']> => {
  const seen: Reply<'readInbox'>['items'] = [];
  let after: string | null = null;
  do {
    const page: Reply<'readInbox'> = await readInbox({
      ctx,
      input: { limit, ...(after === null ? {} : { after }) },
    });
    seen.push(...page.items);
    after = page.next;
  } while (after !== null);
  return seen;
};

describe('the inbox', () => {
  it('stands in stored order with blocks by the calendar of the academy, pain first', async () => {
    const coach = await createMembership(test.db);
    const { academyId } = coach;
    const student = await createStudent(test.db, { academyId, trialStartedAt: later(-24 * 3) });
    const send = (answerHours: number, given = {}) =>
      createSubmission(test.db, {
        academyId,
        studentId: student.id,
        answerBy: later(answerHours),
        priorityKey: later(answerHours),
        ...given,
      });
    const made = {
      later: await send(72),
      tomorrow: await send(24),
      today: await send(7),
      'before-noon': await send(2),
      late: await send(-1),
      pain: await send(4, { pain: 'new', priorityKey: later(-24 * 36_525) }),
    };
    const { items } = await readInbox({ ctx: actingStaff(world, coach), input: { limit: 50 } });
    expect(items.map(({ id, block }) => [block, id])).toEqual(
      (['pain', 'late', 'before-noon', 'today', 'tomorrow', 'later'] as const).map((block) => [
        block,
        made[block].id,
      ]),
    );
    expect(items[0]?.student).toMatchObject({ name: 'A student', standing: 'trial', trialDay: 4 });
  });

  it('shows poster, reasons and a claim that has not run out', async () => {
    const coach = await createMembership(test.db, { name: 'The coach' });
    const { academyId } = coach;
    const row = await createSubmission(test.db, {
      academyId,
      reasons: [{ kind: 'promise', answerBy: later(24).toISOString() }],
      claimedBy: coach.id,
      claimedAt: now,
      claimExpiresAt: later(0.5),
    });
    const clip = await createClip(test.db, {
      academyId,
      studentId: row.studentId,
      submissionId: row.id,
      view: 'down-the-line',
    });
    const ctx = actingStaff(world, coach);
    const { items } = await readInbox({ ctx, input: { limit: 50 } });
    expect(items[0]).toMatchObject({
      view: 'down-the-line',
      poster: `/media/clips/${clip.id}/poster.jpg`,
      reasons: [{ kind: 'promise' }],
      claim: { membershipId: coach.id, name: 'The coach' },
    });
    const mine = await readInbox({ ctx, input: { limit: 50, claimed: 'me' } });
    expect(mine.items.map(({ id }) => id)).toEqual([row.id]);
    expect((await readInbox({ ctx, input: { limit: 50, claimed: 'nobody' } })).items).toEqual([]);
    expect((await readInbox({ ctx, input: { limit: 50, fault: 'shank' } })).items).toEqual([]);
  });

  it('comes in pages without a gap or a row twice, equal keys included', async () => {
    const coach = await createMembership(test.db);
    const { academyId } = coach;
    const student = await createStudent(test.db, { academyId });
    for (const key of [3, 1, 3, 3, 2, 3, 1]) {
      await createSubmission(test.db, { academyId, studentId: student.id, priorityKey: later(key) });
    }
    const ctx = actingStaff(world, coach);
    const all = (await readInbox({ ctx, input: { limit: 100 } })).items.map(({ id }) => id);
    const paged = (await pageThrough(ctx, 2)).map(({ id }) => id);
    expect(paged).toEqual(all);
    expect(new Set(paged).size).toBe(7);
    await expect(readInbox({ ctx, input: { limit: 2, after: 'rubbish' } })).rejects.toMatchObject({
      code: 'bad-request',
    });
  });

  it('is not for students, and holds nothing of another academy', async () => {
    await createSubmission(test.db);
    const coach = await createMembership(test.db);
    const student = await createStudent(test.db, { academyId: coach.academyId });
    await expect(
      readInbox({ ctx: actingStudent(world, student), input: { limit: 50 } }),
    ).rejects.toMatchObject({ code: 'not-allowed' });
    expect(await readInbox({ ctx: actingStaff(world, coach), input: { limit: 50 } })).toEqual({
      items: [],
      next: null,
    });
  });
});
