import { randomUUID } from 'node:crypto';
import { type Database, openDatabase } from '@ballfirst/db/database';
import { grantDatabase } from '@ballfirst/db/migrate/grant-database';
import pg from 'pg';
import { inject } from 'vitest';
import { roleUrl } from './role-url.ts';
import './provided.ts';

export type TestDatabase = {
  /** Opened as role `app`. */
  db: Database;
  appUrl: string;
  ownerUrl: string;
  queueUrl: string;
  /** Passes every policy: for looking at the catalog, never for testing what a tenant sees. */
  superuserUrl: string;
  close(): Promise<void>;
};

/** A clone of the template for one test file (about 60 ms). It is not dropped: the run's server goes as a whole. */
export const testDatabase = async (options: { poolSize?: number } = {}): Promise<TestDatabase> => {
  const { superuserUrl, template } = inject('ballfirstDatabase');
  const databaseName = `${template}_${randomUUID().slice(0, 8)}`;
  const client = new pg.Client({ connectionString: superuserUrl });
  await client.connect();
  try {
    await client.query(`CREATE DATABASE ${databaseName} TEMPLATE ${template} OWNER owner`);
  } finally {
    await client.end();
  }
  await grantDatabase({ superuserUrl, databaseName });
  const appUrl = roleUrl(superuserUrl, databaseName, 'app');
  const db = openDatabase({
    url: appUrl,
    poolSize: options.poolSize ?? 5,
    applicationName: 'ballfirst test',
  });
  const inClone = new URL(superuserUrl);
  inClone.pathname = `/${databaseName}`;
  return {
    db,
    appUrl,
    ownerUrl: roleUrl(superuserUrl, databaseName, 'owner'),
    queueUrl: roleUrl(superuserUrl, databaseName, 'queue'),
    superuserUrl: inClone.toString(),
    close: () => db.close(),
  };
};
