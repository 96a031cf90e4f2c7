import { createAcademy, factoryNow } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { newId } from '../ids.ts';
import { verifyAudit } from '../reads/verify-audit.ts';
import { type Tx, withAcademy } from '../with-academy.ts';
import { academiesToSeal } from './academies-to-seal.ts';
import { sealAudit } from './seal-audit.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

const now = factoryNow;

const write = async (tx: Tx, academyId: string, subject: string): Promise<string> => {
  const id = newId();
  const detail = { to: 'paid', note: 'ü "quoted"' };
  const data = {
    academyId,
    id,
    at: now,
    actor: 'coach',
    action: 'reply.sent',
    subject,
    detail,
    requestId: 'r',
  };
  await tx.auditEntry.create({ data });
  return id;
};

/** Others' transactions on the same server hold the horizon back for a moment: sealing catches up when they end. */
const sealUntil = (academyId: string, headSeq: number): Promise<void> =>
  vi.waitFor(
    async () => {
      expect((await sealAudit(test.db, { academyId, now })).headSeq).toBe(headSeq);
    },
    { timeout: 100_000, interval: 20 },
  );

describe('the audit chain', () => {
  it('is whole when nothing was written', async () => {
    const { id } = await createAcademy(test.db);
    expect(await sealAudit(test.db, { academyId: id, now })).toEqual({
      sealed: 0,
      headSeq: 0,
      headHash: null,
    });
    expect(await verifyAudit(test.db, { academyId: id })).toMatchObject({
      whole: true,
      sealed: 0,
      headHash: null,
    });
  });

  it('seals what has ended, keeps its head and verifies', async () => {
    const { id } = await createAcademy(test.db);
    await withAcademy(test.db, id, (tx) => write(tx, id, 'one'));
    await withAcademy(test.db, id, (tx) => write(tx, id, 'two'));
    expect(await academiesToSeal(test.db, { now })).toContain(id);
    await sealUntil(id, 2);
    expect(await academiesToSeal(test.db, { now })).not.toContain(id);
    const verdict = await verifyAudit(test.db, { academyId: id });
    expect(verdict).toMatchObject({ whole: true, sealed: 2, unsealed: 0, firstBadSeq: null });
    expect(verdict.headHash).toBe((await sealAudit(test.db, { academyId: id, now })).headHash);
    expect(verdict.headHash).toMatch(/^[0-9a-f]{64}$/);
  });

  it('waits for a transaction that began earlier, so that its rows come first in the chain', async () => {
    const { id } = await createAcademy(test.db);
    let finish = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      finish = resolve;
    });
    let written: (id: string) => void = () => undefined;
    const early = new Promise<string>((resolve) => {
      written = resolve;
    });
    const slow = withAcademy(test.db, id, async (tx) => {
      written(await write(tx, id, 'early'));
      await held;
    });
    const earlyId = await early;
    const lateId = await withAcademy(test.db, id, (tx) => write(tx, id, 'late'));
    expect((await sealAudit(test.db, { academyId: id, now })).sealed).toBe(0);
    finish();
    await slow;
    await sealUntil(id, 2);
    const rows = await withAcademy(test.db, id, (tx) => tx.auditEntry.findMany({ orderBy: { seq: 'asc' } }));
    expect(rows.map((row) => row.id)).toEqual([earlyId, lateId]);
  });

  it('is closed to the app role once sealed, and shows where somebody stronger touched it', async () => {
    const { id } = await createAcademy(test.db);
    for (const subject of ['one', 'two', 'three'])
      await withAcademy(test.db, id, (tx) => write(tx, id, subject));
    await sealUntil(id, 3);
    const change = withAcademy(test.db, id, (tx) => tx.auditEntry.updateMany({ data: { actor: 'nobody' } }));
    await expect(change).rejects.toThrow(/permission denied/);
    const remove = withAcademy(test.db, id, (tx) => tx.auditEntry.deleteMany());
    await expect(remove).rejects.toThrow(/permission denied/);

    const superuser = new pg.Client({ connectionString: test.superuserUrl });
    await superuser.connect();
    await superuser.query(`UPDATE audit_entry SET actor = 'x' WHERE academy_id = $1 AND seq = 2`, [id]);
    expect(await verifyAudit(test.db, { academyId: id })).toMatchObject({ whole: false, firstBadSeq: 2 });
    await superuser.query(`UPDATE audit_entry SET actor = 'coach' WHERE academy_id = $1 AND seq = 2`, [id]);
    expect((await verifyAudit(test.db, { academyId: id })).whole).toBe(true);
    await superuser.query('DELETE FROM audit_entry WHERE academy_id = $1 AND seq = 2', [id]);
    await superuser.end();
    expect(await verifyAudit(test.db, { academyId: id })).toMatchObject({ whole: false, firstBadSeq: 3 });
  });

  it('never forks when two seal at once', async () => {
    const { id } = await createAcademy(test.db);
    for (let i = 0; i < 10; i += 1) await withAcademy(test.db, id, (tx) => write(tx, id, String(i)));
    await Promise.all([1, 2, 3].map(() => sealAudit(test.db, { academyId: id, now })));
    await sealUntil(id, 10);
    expect(await verifyAudit(test.db, { academyId: id })).toMatchObject({ whole: true, sealed: 10 });
  });
});
