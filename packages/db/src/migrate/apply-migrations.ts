import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { MigrationRefusal } from './migration-refusal.ts';
import { type Migration, readMigrations } from './read-migrations.ts';

/** The advisory lock Prisma itself takes while it migrates: the two keep out of each other's way. */
const prismaLock = 72_707_369;

/** Prisma's own table of what was applied, column for column. */
const ledger = `CREATE TABLE IF NOT EXISTS public._prisma_migrations (
  id VARCHAR(36) PRIMARY KEY NOT NULL,
  checksum VARCHAR(64) NOT NULL,
  finished_at TIMESTAMPTZ,
  migration_name VARCHAR(255) NOT NULL,
  logs TEXT,
  rolled_back_at TIMESTAMPTZ,
  started_at TIMESTAMPTZ NOT NULL DEFAULT now(),
  applied_steps_count INTEGER NOT NULL DEFAULT 0
)`;

type LedgerRow = { migration_name: string; checksum: string; finished: boolean };

/** The migrations still to apply. @throws MigrationRefusal when ledger and folder do not fit */
export const pendingMigrations = (known: readonly Migration[], rows: readonly LedgerRow[]): Migration[] => {
  const byName = new Map(known.map((migration) => [migration.name, migration]));
  for (const row of rows) {
    if (!row.finished) throw new MigrationRefusal('failed', row.migration_name);
    const migration = byName.get(row.migration_name);
    if (migration === undefined) throw new MigrationRefusal('newer-database', row.migration_name);
    if (migration.checksum !== row.checksum) throw new MigrationRefusal('edited', row.migration_name);
  }
  const applied = new Set(rows.map((row) => row.migration_name));
  return known.filter((migration) => !applied.has(migration.name));
};

const applyOne = async (client: pg.Client, migration: Migration): Promise<void> => {
  await client.query('BEGIN');
  try {
    await client.query(migration.sql);
    await client.query('RESET ROLE');
    await client.query(
      `INSERT INTO public._prisma_migrations
         (id, checksum, migration_name, logs, started_at, finished_at, applied_steps_count)
       VALUES ($1, $2, $3, NULL, transaction_timestamp(), clock_timestamp(), 1)`,
      [randomUUID(), migration.checksum, migration.name],
    );
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    throw new MigrationRefusal('broken', migration.name, error);
  }
};

/**
 * Brings a database up to the migrations of a folder, as its owner, one transaction a migration; several starters wait
 * for one another. A kill in the middle leaves whole migrations only, so that running it again goes on.
 * @throws MigrationRefusal
 */
export const applyMigrations = async (options: {
  ownerUrl: string;
  folder: string;
  log?: (line: string) => void;
}): Promise<{ applied: string[] }> => {
  const known = await readMigrations(options.folder);
  const client = new pg.Client({ connectionString: options.ownerUrl, application_name: 'ballfirst migrate' });
  await client.connect();
  try {
    await client.query(`SET lock_timeout = '60s'`);
    await client.query('SELECT pg_advisory_lock($1)', [prismaLock]);
    await client.query('RESET lock_timeout');
    await client.query(ledger);
    const { rows } = await client.query<LedgerRow>(
      `SELECT migration_name, checksum, finished_at IS NOT NULL AS finished
       FROM public._prisma_migrations WHERE rolled_back_at IS NULL ORDER BY started_at`,
    );
    const pending = pendingMigrations(known, rows);
    for (const migration of pending) {
      await applyOne(client, migration);
      options.log?.(`applied ${migration.name}`);
    }
    return { applied: pending.map((migration) => migration.name) };
  } finally {
    await client.end();
  }
};
