import { takeOutbox } from '@ballfirst/db/crossings/take-outbox';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createAcademy, createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { changeStanding } from './change-standing.ts';
import { readStudent } from './read-student.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const managed = async (
  given: Parameters<typeof createStudent>[1] = {},
  academy: Parameters<typeof createAcademy>[1] = {},
) => {
  const { id: academyId } = await createAcademy(test.db, academy);
  const manager = await createMembership(test.db, { academyId, role: 'manager', name: 'The manager' });
  const student = await createStudent(test.db, { academyId, ...given });
  return { academyId, student, ctx: actingStaff(world, manager) };
};
const dayMs = 86_400_000;

describe('changing the standing of a student', () => {
  it('is kept in its history with who, when and why, audited without the reason, and told', async () => {
    const { ctx, academyId, student } = await managed();
    const paid = await changeStanding({ ctx, input: { id: student.id, to: 'paid', reason: 'likes it' } });
    expect(paid.standing).toBe('paid');
    expect(paid.standings).toEqual([
      { from: 'trial', to: 'paid', reason: 'likes it', by: 'The manager', at: factoryNow.toISOString() },
    ]);
    world.now = new Date(factoryNow.getTime() + 1000);
    const paused = await changeStanding({ ctx, input: { id: student.id, to: 'paused', reason: 'away' } });
    expect(paused.standings.map(({ to }) => to)).toEqual(['paused', 'paid']);
    expect((await readStudent({ ctx, input: { id: student.id } })).standings).toHaveLength(2);
    const audited = await withAcademy(test.db, academyId, (tx) =>
      tx.auditEntry.findMany({ where: { academyId }, orderBy: { at: 'asc' } }),
    );
    expect(audited.map(({ detail }) => detail)).toEqual([
      { from: 'trial', to: 'paid' },
      { from: 'paid', to: 'paused' },
    ]);
    const events = await takeOutbox(test.db, {
      limit: 100,
      now: new Date(factoryNow.getTime() + dayMs),
      retakeAfterSeconds: 0,
    });
    expect(events.filter((event) => event.academyId === academyId)).toMatchObject([
      { kind: 'standing.changed', payload: { studentId: student.id, to: 'paid' } },
      { kind: 'standing.changed', payload: { studentId: student.id, to: 'paused' } },
    ]);
  });

  it('is refused where there is no way, and nothing is written', async () => {
    const { ctx, academyId, student } = await managed();
    for (const to of ['trial', 'paused', 'invited'] as const) {
      await expect(changeStanding({ ctx, input: { id: student.id, to, reason: '' } })).rejects.toMatchObject({
        code: 'standing-not-possible',
      });
    }
    const { standing, standings } = await readStudent({ ctx, input: { id: student.id } });
    expect({ standing, standings }).toEqual({ standing: 'trial', standings: [] });
    const rows = await withAcademy(test.db, academyId, (tx) => tx.auditEntry.count({ where: { academyId } }));
    expect(rows).toBe(0);
  });

  it('starts a second trial afresh, or with the next swing where the academy starts trials so', async () => {
    const past = {
      standing: 'lapsed',
      trialStartedAt: new Date(factoryNow.getTime() - 30 * dayMs),
      trialEndsAt: new Date(factoryNow.getTime() - 16 * dayMs),
    };
    const joining = await managed(past);
    const again = { to: 'trial', reason: 'second chance' } as const;
    const fresh = await changeStanding({ ctx: joining.ctx, input: { id: joining.student.id, ...again } });
    expect(fresh).toMatchObject({ trialDay: 1, trialEndsAt: '2026-03-24T00:00:00.000Z' });
    const swing = await managed(past, { trialStarts: 'first-swing' });
    const later = await changeStanding({ ctx: swing.ctx, input: { id: swing.student.id, ...again } });
    expect(later).toMatchObject({ trialDay: null, trialEndsAt: null });
  });

  it('happens once for one key', async () => {
    const { ctx, student } = await managed();
    const once = { owner: 'membership', key: newId(), requestHash: 'a' };
    const ask = () =>
      changeStanding({ ctx: { ...ctx, once }, input: { id: student.id, to: 'paid', reason: '' } });
    expect(await Promise.all([ask(), ask()])).toHaveLength(2);
    expect((await ask()).standings).toHaveLength(1);
  });

  it('is for managers of the academy only', async () => {
    const { academyId, student } = await managed();
    const other = await managed();
    const input = { id: student.id, to: 'paid', reason: '' } as const;
    const coach = await createMembership(test.db, { academyId });
    for (const ctx of [actingStaff(world, coach), actingStudent(world, student)]) {
      await expect(changeStanding({ ctx, input })).rejects.toMatchObject({ code: 'not-allowed' });
    }
    await expect(changeStanding({ ctx: other.ctx, input })).rejects.toMatchObject({ code: 'not-found' });
    await expect(readStudent({ ctx: other.ctx, input })).rejects.toMatchObject({ code: 'not-found' });
    await expect(readStudent({ ctx: actingStudent(world, student), input })).rejects.toMatchObject({
      code: 'not-allowed',
    });
  });
});
