import pg from 'pg';

/** The part of a pg client that the queue's own migrations use. */
export type QueueClient = {
  query<Row>(text: string, values?: readonly unknown[]): Promise<{ rows: Row[]; rowCount?: number | null }>;
};

/**
 * Runs the queue library's migrations as role `queue`. That library is given (`runMigrations` of bullmq) and would first
 * create its schema, which asks for CREATE on the whole database even when the schema is there: that one line is left out.
 */
export const migrateQueue = async (options: {
  queueUrl: string;
  runMigrations: (client: QueueClient, schema: string) => Promise<number>;
}): Promise<number> => {
  const client = new pg.Client({ connectionString: options.queueUrl, application_name: 'ballfirst queue' });
  await client.connect();
  const guarded: QueueClient = {
    query: <Row>(text: string, values: readonly unknown[] = []) => {
      const allowed = /^CREATE SCHEMA IF NOT EXISTS\b/.test(text) ? 'SELECT 1' : text;
      // Without values pg uses the simple protocol, which alone takes a file of several statements.
      return values.length === 0
        ? client.query<Row & pg.QueryResultRow>(allowed)
        : client.query<Row & pg.QueryResultRow>(allowed, [...values]);
    },
  };
  try {
    return await options.runMigrations(guarded, 'bullmq');
  } finally {
    await client.end();
  }
};
