import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { newId } from '@ballfirst/db/ids';
import { applyMigrations } from '@ballfirst/db/migrate/apply-migrations';
import { ensureRoles } from '@ballfirst/db/migrate/ensure-roles';
import { urlOfDatabase } from '@ballfirst/db/migrate/grant-database';
import { readMigrations } from '@ballfirst/db/migrate/read-migrations';
import { dropTemplate, migrationsFolder } from '@ballfirst/testing/make-template';
import { roleUrl, testPasswords } from '@ballfirst/testing/role-url';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { withCatalog } from './catalog/client.ts';
import { describeCatalog } from './catalog/describe-catalog.ts';
import { withPrismaEngine } from './catalog/prisma-engine.ts';

// What Prisma 7.10's own schema engine says of a database that our applier migrated: the reference is the engine itself.
const schemaPath = fileURLToPath(new URL('../../prisma/schema.prisma', import.meta.url));
const filters = { externalTables: [], externalEnums: [] };

let test: TestDatabase;
let owner: pg.Client;
beforeAll(async () => {
  test = await testDatabase();
  owner = new pg.Client({ connectionString: test.ownerUrl });
  await owner.connect();
});
afterAll(async () => {
  await owner.end();
  await test.close();
});

/** The SQL that Prisma would still run to bring the database to schema.prisma. */
const remaining = (): Promise<string> =>
  withPrismaEngine(test.ownerUrl, schemaPath, async (engine, files) => {
    const result = await engine.diff({
      from: { tag: 'schemaDatasource', files, configDir: '.' },
      to: { tag: 'schemaDatamodel', files },
      script: true,
      exitCode: null,
      filters,
    });
    return (result.stdout ?? '').trim();
  });

/** The migrations as Prisma's engine takes them. */
const migrationsList = async () => {
  const migrations = await readMigrations(migrationsFolder);
  const lockPath = join(migrationsFolder, 'migration_lock.toml');
  const lockfile = { path: 'migration_lock.toml', content: await readFile(lockPath, 'utf8') };
  const migrationDirectories = migrations.map(({ name, sql }) => ({
    path: name,
    migrationFile: { path: 'migration.sql', content: { tag: 'ok' as const, value: sql } },
  }));
  return { baseDir: migrationsFolder, lockfile, shadowDbInitScript: '', migrationDirectories };
};

/** What `prisma migrate status` finds, without its shadow database. */
const history = async () => {
  const input = { migrationsList: await migrationsList(), optInToShadowDatabase: false, filters };
  return withPrismaEngine(test.ownerUrl, schemaPath, (engine) => engine.diagnoseMigrationHistory(input));
};

/** What `prisma migrate deploy` does. @returns the names it applied */
const deploy = async (ownerUrl: string): Promise<string[]> => {
  const input = { migrationsList: await migrationsList(), filters };
  const result = await withPrismaEngine(ownerUrl, schemaPath, (engine) => engine.applyMigrations(input));
  return result.appliedMigrationNames;
};

describe('Prisma', () => {
  it('finds nothing left to migrate', async () => {
    expect(await remaining()).toBe('-- This is an empty migration.');
  });

  it.each([
    ['ALTER TABLE mail ADD COLUMN stray text', 'ALTER TABLE mail DROP COLUMN stray', /DROP COLUMN "stray"/],
    [
      'ALTER TABLE mail ALTER COLUMN at TYPE timestamptz(6)',
      'ALTER TABLE mail ALTER COLUMN at TYPE timestamptz(3)',
      /ALTER COLUMN "at"/,
    ],
  ])('finds what is left after: %s', async (change, back, finding) => {
    await owner.query(change);
    const found = await remaining();
    await owner.query(back);
    expect(found).toMatch(finding);
    expect(await remaining()).toBe('-- This is an empty migration.');
  });

  it('accepts the migrations as its own: applied, whole, unedited', async () => {
    expect(await history()).toMatchObject({
      hasMigrationsTable: true,
      editedMigrationNames: [],
      failedMigrationNames: [],
      history: null,
    });
  });

  it('deploys nothing onto it, and all of them onto an empty one with the same outcome', async () => {
    expect(await deploy(test.ownerUrl)).toEqual([]);
    const { superuserUrl } = inject('ballfirstDatabase');
    const databaseName = `prisma_deployed_${newId().slice(-8)}`;
    await ensureRoles({ superuserUrl, databaseName, passwords: testPasswords });
    const names = (await readMigrations(migrationsFolder)).map((migration) => migration.name);
    expect(await deploy(roleUrl(superuserUrl, databaseName, 'owner'))).toEqual(names);
    const deployed = await withCatalog(urlOfDatabase(superuserUrl, databaseName), describeCatalog);
    expect(deployed).toBe(await withCatalog(test.superuserUrl, describeCatalog));
    const ours = await applyMigrations({
      ownerUrl: roleUrl(superuserUrl, databaseName, 'owner'),
      folder: migrationsFolder,
    });
    expect(ours.applied).toEqual([]);
    await dropTemplate(superuserUrl, databaseName);
  });

  it('tells an edited one and an unfinished one', async () => {
    const { rows } = await owner.query<{ name: string; checksum: string }>(
      'SELECT migration_name AS name, checksum FROM _prisma_migrations ORDER BY migration_name LIMIT 1',
    );
    const [first] = rows;
    const change = 'UPDATE _prisma_migrations SET checksum = $2 WHERE migration_name = $1';
    await owner.query(change, [first?.name, '0'.repeat(64)]);
    expect((await history()).editedMigrationNames).toEqual([first?.name]);
    await owner.query(change, [first?.name, first?.checksum]);
    await owner.query('UPDATE _prisma_migrations SET finished_at = NULL WHERE migration_name = $1', [
      first?.name,
    ]);
    expect((await history()).failedMigrationNames).toEqual([first?.name]);
    await owner.query('UPDATE _prisma_migrations SET finished_at = now() WHERE finished_at IS NULL');
    expect((await history()).failedMigrationNames).toEqual([]);
  });
});
