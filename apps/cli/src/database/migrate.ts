import { ensureRoles } from '@ballfirst/db/migrate/ensure-roles';
import { say } from '../say.ts';
import { Sentence } from '../sentence.ts';
import { prepareDatabase } from './prepare-database.ts';

const databaseName = 'ballfirst';
const needed = ['DATABASE_SUPERUSER_URL', 'OWNER_PASSWORD', 'APP_PASSWORD', 'QUEUE_PASSWORD'] as const;

/**
 * `node apps/cli/launch.mjs migrate`: makes roles and database on a PostgreSQL of one's own, then brings it up to date.
 * Safe to run again and by several at once.
 *
 * @returns exit code
 * @throws Sentence that names what is missing
 */
export async function migrate(
  root: string,
  env: Readonly<Record<string, string | undefined>>,
): Promise<number> {
  const missing = needed.filter((name) => !env[name]);
  if (missing.length > 0) throw new Sentence(`migrate needs ${missing.join(', ')}.`);
  const superuserUrl = env.DATABASE_SUPERUSER_URL ?? '';
  const passwords = {
    owner: env.OWNER_PASSWORD ?? '',
    app: env.APP_PASSWORD ?? '',
    queue: env.QUEUE_PASSWORD ?? '',
  };
  await ensureRoles({ superuserUrl, databaseName, passwords });
  const urlOf = (role: keyof typeof passwords): string => {
    const url = new URL(superuserUrl);
    url.username = role;
    url.password = passwords[role];
    url.pathname = `/${databaseName}`;
    return url.toString();
  };
  await prepareDatabase(root, { app: urlOf('app'), owner: urlOf('owner'), queue: urlOf('queue') });
  say('the database is up to date');
  return 0;
}
