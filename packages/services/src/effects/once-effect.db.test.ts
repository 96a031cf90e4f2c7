import { newId } from '@ballfirst/db/ids';
import { createAcademy, factoryNow } from '@ballfirst/testing/factories';
import { systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { audit } from '../audit.ts';
import { onceEffect } from './once-effect.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());

describe('an effect', () => {
  it('happens once, of ten runs at the same time', async () => {
    const { id } = await createAcademy(test.db);
    const ctx = systemWorld(test.db, factoryNow).contextOf(id);
    const key = { eventId: newId(), name: 'test' };
    const run = () =>
      onceEffect(ctx, key, async (tx) => {
        await audit(tx, ctx, { action: 'test', subject: 'x' });
        return 'done';
      });
    const results = await Promise.all(Array.from({ length: 10 }, run));
    expect(results.filter((result) => result === 'done')).toHaveLength(1);
    expect(results.filter((result) => result === null)).toHaveLength(9);
    const rows = await onceEffect(ctx, { eventId: newId(), name: 'look' }, (tx) =>
      tx.auditEntry.count({ where: { academyId: id } }),
    );
    expect(rows).toBe(1);
  });

  it('that failed leaves no key behind and happens at the next run', async () => {
    const { id } = await createAcademy(test.db);
    const ctx = systemWorld(test.db, factoryNow).contextOf(id);
    const key = { eventId: newId(), name: 'test' };
    const failing = onceEffect(ctx, key, async () => {
      throw new Error('cut off');
    });
    await expect(failing).rejects.toThrow('cut off');
    expect(await onceEffect(ctx, key, async () => 'done')).toBe('done');
    expect(await onceEffect(ctx, key, async () => 'again')).toBeNull();
  });

  it('of one academy is not that of another', async () => {
    const world = systemWorld(test.db, factoryNow);
    const key = { eventId: newId(), name: 'test' };
    for (const { id } of [await createAcademy(test.db), await createAcademy(test.db)]) {
      expect(await onceEffect(world.contextOf(id), key, async () => id)).toBe(id);
    }
  });
});
