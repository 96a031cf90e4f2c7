import { join } from 'node:path';
import { applyMigrations } from '@ballfirst/db/migrate/apply-migrations';
import { migrateQueue } from '@ballfirst/db/migrate/migrate-queue';
import { MigrationRefusal } from '@ballfirst/db/migrate/migration-refusal';
import { runMigrations } from 'bullmq';
import { Sentence } from '../sentence.ts';
import type { DatabaseUrls } from '../start/settings.ts';

/**
 * Brings our tables and the queue's tables up to date. Several starters wait for one another.
 *
 * @param root the project, whose `prisma/migrations` are applied
 * @throws Sentence when the database was made by a newer version, or a migration is refused
 */
export async function prepareDatabase(root: string, urls: DatabaseUrls): Promise<void> {
  try {
    await applyMigrations({ ownerUrl: urls.owner, folder: join(root, 'prisma', 'migrations') });
    await migrateQueue({ queueUrl: urls.queue, runMigrations });
  } catch (error) {
    if (error instanceof MigrationRefusal) throw new Sentence(sentenceOf(error));
    if (isRefusedConnection(error)) {
      throw new Sentence(`The database does not let us in: ${(error as Error).message}.`);
    }
    throw error;
  }
}

function sentenceOf(refusal: MigrationRefusal): string {
  if (refusal.kind === 'newer-database') {
    return `The database was made by a newer version of Ballfirst (it knows ${refusal.migration}): start that version.`;
  }
  const cause = refusal.cause instanceof Error ? `: ${refusal.cause.message}` : '';
  return `${refusal.message}${cause}.`;
}

/** Unreachable, wrong password, no such role or database (PostgreSQL error classes 28 and 3D). */
function isRefusedConnection(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return /^(ECONNREFUSED|ENOTFOUND|ETIMEDOUT|EHOSTUNREACH|28|3D)/.test(code);
}
