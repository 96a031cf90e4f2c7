import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { migrationsFolder } from '@ballfirst/testing/make-template';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { applyMigrations } from './apply-migrations.ts';
import { readMigrations } from './read-migrations.ts';

let test: TestDatabase;
let folder: string;
let owner: pg.Client;

beforeAll(async () => {
  test = await testDatabase();
  folder = await mkdtemp(join(tmpdir(), 'ballfirst-migrations-'));
  for (const migration of await readMigrations(migrationsFolder)) await add(migration.name, migration.sql);
  owner = new pg.Client({ connectionString: test.ownerUrl });
  await owner.connect();
});
afterAll(async () => {
  await owner.end();
  await test.close();
  await rm(folder, { recursive: true, force: true });
});

const add = async (name: string, sql: string): Promise<void> => {
  await mkdir(join(folder, name), { recursive: true });
  await writeFile(join(folder, name, 'migration.sql'), sql);
};
const apply = () => applyMigrations({ ownerUrl: test.ownerUrl, folder });

describe('applyMigrations', () => {
  it('finds a migrated database up to date', async () => {
    expect(await apply()).toEqual({ applied: [] });
  });

  it('keeps nothing of a migration that breaks, and goes on once it is mended', async () => {
    await add('29990101000000_broken', 'CREATE TABLE public.half (id int); SELECT 1 / 0;');
    await expect(apply()).rejects.toMatchObject({ kind: 'broken', migration: '29990101000000_broken' });
    const half = await owner.query(`SELECT to_regclass('public.half') AS name`);
    expect(half.rows).toEqual([{ name: null }]);
    await add('29990101000000_broken', 'CREATE TABLE public.whole (id int)');
    expect(await apply()).toEqual({ applied: ['29990101000000_broken'] });
  });

  it('lets two starters at once apply it once', async () => {
    await add('29990102000000_once', 'CREATE TABLE public.once (id int)');
    const both = await Promise.all([apply(), apply()]);
    expect(both.flatMap((result) => result.applied)).toEqual(['29990102000000_once']);
  });

  it('refuses an edited file, and a database that knows more than the folder', async () => {
    await add('29990102000000_once', 'CREATE TABLE public.once (id bigint)');
    await expect(apply()).rejects.toMatchObject({ kind: 'edited' });
    await rm(join(folder, '29990102000000_once'), { recursive: true });
    await expect(apply()).rejects.toMatchObject({ kind: 'newer-database', migration: '29990102000000_once' });
  });
});
