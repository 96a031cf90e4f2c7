import { createAcademy, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import pg from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { audit } from '../audit.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { Head, headKey } from './head-file.ts';
import { sealAcademy } from './seal-academy.ts';
import { verifyAcademy } from './verify-academy.ts';

let test: TestDatabase;
let world: SystemWorld;
let ctx: Context;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(async () => {
  world = systemWorld(test.db, factoryNow);
  ctx = world.contextOf((await createAcademy(test.db)).id);
});

const write = (subject: string) =>
  inTransaction(ctx, (tx) => audit(tx, ctx, { action: 'test', subject, detail: { to: 'paid' } }));
/** Others' transactions on the same server hold sealing back for a moment. */
const sealUntil = (seq: number) =>
  vi.waitFor(async () => expect((await sealAcademy({ ctx })).headSeq).toBe(seq), {
    timeout: 100_000,
    interval: 20,
  });
const head = (date = '2026-03-10') => {
  const bytes = world.files.get(headKey(ctx.academyId, date));
  return bytes === undefined ? null : Head.parse(JSON.parse(Buffer.from(bytes).toString('utf8')));
};

describe('the audit of an academy', () => {
  it('is sealed, its head of the day kept outside the database, and verifies', async () => {
    await write('one');
    await write('two');
    await sealUntil(2);
    expect(head()).toMatchObject({ academyId: ctx.academyId, seq: 2, date: '2026-03-10' });
    expect(await verifyAcademy({ ctx })).toMatchObject({ whole: true, sealed: 2, holdsHead: true });
    await write('three');
    await sealUntil(3);
    expect(head()).toMatchObject({ seq: 3 });
    world.now = new Date('2026-03-12T09:00:00Z');
    await sealAcademy({ ctx });
    expect(head('2026-03-12')).toMatchObject({ seq: 3 });
    expect(head()).toMatchObject({ seq: 3 });
  });

  it('without rows has no head and is whole', async () => {
    await sealAcademy({ ctx });
    expect(world.files.size).toBe(0);
    expect(await verifyAcademy({ ctx })).toMatchObject({ whole: true, holdsHead: null });
  });

  it('is not whole when a row stays unsealed for more than five minutes', async () => {
    await write('one');
    world.now = new Date(factoryNow.getTime() + 5 * 60_000);
    expect(await verifyAcademy({ ctx })).toMatchObject({ whole: true, unsealed: 1 });
    world.now = new Date(factoryNow.getTime() + 5 * 60_000 + 1);
    expect(await verifyAcademy({ ctx })).toMatchObject({ whole: false, unsealed: 1 });
  });

  it('that was cut back behind its head, or written anew, shows it', async () => {
    for (const subject of ['one', 'two', 'three']) await write(subject);
    await sealUntil(3);
    const superuser = new pg.Client({ connectionString: test.superuserUrl });
    await superuser.connect();
    await superuser.query('DELETE FROM audit_entry WHERE academy_id = $1 AND seq = 3', [ctx.academyId]);
    await superuser.end();
    // What is left still chains: only the head outside tells.
    expect(await verifyAcademy({ ctx })).toMatchObject({ whole: false, firstBadSeq: null, holdsHead: false });
    await write('three, otherwise');
    await sealUntilWithoutHead(3);
    expect(await verifyAcademy({ ctx })).toMatchObject({ whole: false, firstBadSeq: null, holdsHead: false });
  });
});

/** Seals with the files of somebody who could not reach the real ones. */
const sealUntilWithoutHead = (seq: number) => {
  const other = systemWorld(test.db, factoryNow).contextOf(ctx.academyId);
  return vi.waitFor(async () => expect((await sealAcademy({ ctx: other })).headSeq).toBe(seq), {
    timeout: 100_000,
    interval: 20,
  });
};
