import pg from 'pg';

/** The same connection string with another database. */
export const urlOfDatabase = (url: string, databaseName: string): string => {
  const changed = new URL(url);
  changed.pathname = `/${encodeURIComponent(databaseName)}`;
  return changed.toString();
};

/**
 * Who may enter a database and make what there; a clone of a template does not inherit this: say it again for each.
 * Schema public is given to `owner` by name, because on 15 a role that inherits nothing is not even pg_database_owner.
 */
export const grantDatabase = async (options: {
  superuserUrl: string;
  databaseName: string;
}): Promise<void> => {
  const client = new pg.Client({
    connectionString: urlOfDatabase(options.superuserUrl, options.databaseName),
    application_name: 'ballfirst roles',
  });
  const database = pg.escapeIdentifier(options.databaseName);
  await client.connect();
  try {
    await client.query(`
      REVOKE ALL ON DATABASE ${database} FROM PUBLIC;
      GRANT CONNECT ON DATABASE ${database} TO app;
      GRANT CONNECT, TEMPORARY ON DATABASE ${database} TO queue;
      ALTER SCHEMA public OWNER TO owner;
      REVOKE ALL ON SCHEMA public FROM PUBLIC;
      CREATE SCHEMA IF NOT EXISTS bullmq AUTHORIZATION queue;
    `);
  } finally {
    await client.end();
  }
};
