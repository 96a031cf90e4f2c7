import { newId } from '@ballfirst/db/ids';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import {
  createConcern,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Context } from '../context.ts';
import { claimNext } from './claim-next.ts';
import { readInbox } from './read-inbox.ts';

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

const coaches = async (count: number) => {
  const first = await createMembership(test.db);
  const { academyId } = first;
  const rest = Array.from({ length: count - 1 }, () => createMembership(test.db, { academyId }));
  const members = [first, ...(await Promise.all(rest))];
  const student = await createStudent(test.db, { academyId });
  const send = (hours: number, given = {}) =>
    createSubmission(test.db, { academyId, studentId: student.id, priorityKey: later(hours), ...given });
  const [ctx, ...others] = members.map((member) => actingStaff(world, member));
  if (ctx === undefined) throw new Error('no coach');
  return { academyId, student, send, ctx, others };
};
const next = async (ctx: Context, fault: 'thin' | null = null) =>
  (await claimNext({ ctx, input: { fault } })).taken?.id ?? null;

describe('the next for me', () => {
  it('is taken by key: nobody waits while one behind is served', async () => {
    const { send, ctx } = await coaches(1);
    const made = new Map<number, string>();
    for (const hours of [5, 2, 4, 1, 3]) made.set(hours, (await send(hours)).id);
    const taken: (string | null)[] = [];
    for (let at = 0; at < 6; at += 1) taken.push(await next(ctx));
    expect(taken).toEqual([...[1, 2, 3, 4, 5].map((hours) => made.get(hours)), null]);
    const { items } = await readInbox({ ctx, input: { limit: 50, claimed: 'me' } });
    expect(items).toHaveLength(5);
  });

  it('is another one for each of twenty coaches at once, and none of them twice', async () => {
    const { send, ctx, others } = await coaches(20);
    const made = [];
    for (let at = 0; at < 25; at += 1) made.push((await send(at)).id);
    const taken = await Promise.all([ctx, ...others].map((one) => next(one)));
    expect(new Set(taken).size).toBe(20);
    expect(taken).not.toContain(null);
    // What was passed over because another was taking it is the next one's.
    const rest = await Promise.all(Array.from({ length: 5 }, () => next(ctx)));
    expect(new Set([...taken, ...rest])).toEqual(new Set(made));
    expect(await next(ctx)).toBeNull();
  });

  it('may be of one lead fault; a claim that has run out is free', async () => {
    const { send, ctx, others } = await coaches(2);
    await send(1);
    const thin = await send(2, { leadFault: 'thin' });
    expect(await next(ctx, 'thin')).toBe(thin.id);
    expect(await next(others[0] ?? ctx, 'thin')).toBeNull();
    world.now = later(0.5);
    expect(await next(others[0] ?? ctx, 'thin')).toBe(thin.id);
  });

  it('is a concern where that stands first', async () => {
    const { academyId, student, send, ctx } = await coaches(1);
    const swing = await send(2);
    const base = { academyId, studentId: student.id };
    const pain = await createConcern(test.db, { ...base, priorityKey: later(1) });
    const last = await createConcern(test.db, { ...base, priorityKey: later(3) });
    expect((await claimNext({ ctx, input: { fault: null } })).taken).toEqual({ kind: 'pain', id: pain.id });
    expect(await next(ctx)).toBe(swing.id);
    expect(await next(ctx)).toBe(last.id);
  });

  it('is the same one when the same request comes again', async () => {
    const { send, ctx } = await coaches(1);
    const first = await send(1);
    await send(2);
    const once = { owner: 'a coach', key: newId(), requestHash: 'h' };
    const same = await Promise.all([1, 2, 3].map(() => next({ ...ctx, once })));
    expect(same).toEqual([first.id, first.id, first.id]);
    await expect(next({ ...ctx, once: { ...once, requestHash: 'another' } })).rejects.toMatchObject({
      code: 'key-used-otherwise',
    });
  });

  it('is not for students, and never of another academy', async () => {
    const { student } = await coaches(1);
    const elsewhere = await coaches(1);
    await createSubmission(test.db);
    await expect(next(actingStudent(world, student))).rejects.toMatchObject({ code: 'not-allowed' });
    expect(await next(elsewhere.ctx)).toBeNull();
  });
});
