import pg from 'pg';
import { grantDatabase } from './grant-database.ts';

/** Of our own choosing; two starters on one server must not both find a role missing. */
const rolesLock = 72_707_370;

export type RolePasswords = { owner: string; app: string; queue: string };

const quiet = 'NOSUPERUSER NOCREATEDB NOCREATEROLE NOREPLICATION NOBYPASSRLS';

const ensureRole = async (client: pg.Client, name: string, rights: string): Promise<void> => {
  const { rowCount } = await client.query('SELECT FROM pg_roles WHERE rolname = $1', [name]);
  const verb = rowCount === 0 ? 'CREATE' : 'ALTER';
  await client.query(`${verb} ROLE ${pg.escapeIdentifier(name)} WITH ${rights}`);
};

/**
 * A member that inherits `crossing` would also pass its policies. From 16 the grant says so itself, before it the
 * member does. The owner needs the membership to hand functions over to `crossing`.
 */
const grantCrossing = async (client: pg.Client): Promise<void> => {
  const { rows } = await client.query<{ version: number }>(
    `SELECT current_setting('server_version_num')::int AS version`,
  );
  const modern = (rows[0]?.version ?? 0) >= 160_000;
  await client.query(
    modern ? 'GRANT crossing TO owner WITH INHERIT FALSE, SET TRUE' : 'GRANT crossing TO owner',
  );
};

const ensureDatabase = async (client: pg.Client, name: string): Promise<void> => {
  const { rowCount } = await client.query('SELECT FROM pg_database WHERE datname = $1', [name]);
  if (rowCount !== 0) return;
  await client.query(
    `CREATE DATABASE ${pg.escapeIdentifier(name)} OWNER owner TEMPLATE template0 ENCODING 'UTF8'`,
  );
};

/**
 * Makes the four roles and the database, or brings them back to what they must be; needs a superuser. `owner` migrates,
 * `app` reads and writes under row security, `queue` owns schema `bullmq`, `crossing` owns what may look across academies.
 */
export const ensureRoles = async (options: {
  superuserUrl: string;
  databaseName: string;
  passwords: RolePasswords;
}): Promise<void> => {
  const client = new pg.Client({
    connectionString: options.superuserUrl,
    application_name: 'ballfirst roles',
  });
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock($1)', [rolesLock]);
    const login = (password: string): string =>
      `LOGIN NOINHERIT ${quiet} PASSWORD ${pg.escapeLiteral(password)}`;
    await ensureRole(client, 'owner', login(options.passwords.owner));
    await ensureRole(client, 'app', login(options.passwords.app));
    await ensureRole(client, 'queue', login(options.passwords.queue));
    await ensureRole(client, 'crossing', `NOLOGIN NOINHERIT ${quiet}`);
    await grantCrossing(client);
    await ensureDatabase(client, options.databaseName);
  } finally {
    await client.end();
  }
  await grantDatabase(options);
};
