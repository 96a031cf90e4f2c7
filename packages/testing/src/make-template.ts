import { randomUUID } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { applyMigrations } from '@ballfirst/db/migrate/apply-migrations';
import { ensureRoles } from '@ballfirst/db/migrate/ensure-roles';
import { migrateQueue } from '@ballfirst/db/migrate/migrate-queue';
import { runMigrations } from 'bullmq';
import pg from 'pg';
import { roleUrl, testPasswords } from './role-url.ts';

export const migrationsFolder = fileURLToPath(new URL('../../../prisma/migrations', import.meta.url));

/** Makes a migrated database and closes its door, since a template must have no connection when it is cloned. */
export const makeTemplate = async (superuserUrl: string): Promise<string> => {
  const template = `ballfirst_template_${randomUUID().slice(0, 8)}`;
  await ensureRoles({ superuserUrl, databaseName: template, passwords: testPasswords });
  await applyMigrations({ ownerUrl: roleUrl(superuserUrl, template, 'owner'), folder: migrationsFolder });
  await migrateQueue({ queueUrl: roleUrl(superuserUrl, template, 'queue'), runMigrations });
  const client = new pg.Client({ connectionString: superuserUrl });
  await client.connect();
  try {
    await client.query(`ALTER DATABASE ${template} WITH ALLOW_CONNECTIONS false`);
  } finally {
    await client.end();
  }
  return template;
};

/** Drops a template and every clone of it that a test file left. */
export const dropTemplate = async (superuserUrl: string, template: string): Promise<void> => {
  const client = new pg.Client({ connectionString: superuserUrl });
  await client.connect();
  try {
    const { rows } = await client.query<{ datname: string }>(
      'SELECT datname FROM pg_database WHERE starts_with(datname, $1)',
      [template],
    );
    for (const { datname } of rows) await client.query(`DROP DATABASE ${datname} WITH (FORCE)`);
  } finally {
    await client.end();
  }
};
