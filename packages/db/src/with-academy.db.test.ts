import { createAcademy } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newId } from './ids.ts';
import { type Tx, withAcademy } from './with-academy.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

/** Makes the server fail the transaction as it does when it picks it as the victim of a conflict. */
const raise = (tx: Tx, code: string): Promise<number> =>
  tx.$executeRawUnsafe(`DO $$ BEGIN RAISE EXCEPTION 'again' USING ERRCODE = '${code}'; END $$`);

describe('withAcademy', () => {
  it('shows the rows of its academy and of no other', async () => {
    const mine = await createAcademy(test.db);
    await createAcademy(test.db);
    const seen = await withAcademy(test.db, mine.id, (tx) => tx.academy.findMany());
    expect(seen.map((academy) => academy.id)).toEqual([mine.id]);
  });

  it('leaves nothing when the work throws', async () => {
    const mine = await createAcademy(test.db);
    const work = withAcademy(test.db, mine.id, async (tx) => {
      await tx.academy.update({ where: { id: mine.id }, data: { name: 'Another name' } });
      throw new Error('no');
    });
    await expect(work).rejects.toThrow('no');
    const after = await withAcademy(test.db, mine.id, (tx) =>
      tx.academy.findUnique({ where: { id: mine.id } }),
    );
    expect(after?.name).toBe(mine.name);
  });

  it('refuses an academy that is no id, before any work', async () => {
    let worked = false;
    const work = withAcademy(test.db, "'; DROP TABLE academy", async () => {
      worked = true;
    });
    await expect(work).rejects.toThrow();
    expect(worked).toBe(false);
  });

  it.each(['40001', '40P01'])('runs the whole work again after %s', async (code) => {
    const academy = await createAcademy(test.db);
    let attempts = 0;
    const version = await withAcademy(test.db, academy.id, async (tx) => {
      attempts += 1;
      await tx.academy.update({ where: { id: academy.id }, data: { promiseHours: { increment: 1 } } });
      if (attempts === 1) await raise(tx, code);
      return (await tx.academy.findUniqueOrThrow({ where: { id: academy.id } })).promiseHours;
    });
    expect(attempts).toBe(2);
    expect(version).toBe(academy.promiseHours + 1);
  });

  it('tells a serialization failure after four attempts', async () => {
    let attempts = 0;
    const work = withAcademy(test.db, newId(), async (tx) => {
      attempts += 1;
      await raise(tx, '40001');
    });
    await expect(work).rejects.toThrow();
    expect(attempts).toBe(4);
  });
});
