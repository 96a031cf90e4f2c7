import { createHash } from 'node:crypto';
import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { PrismaClient } from './generated/client.ts';

/** One process's way to the database: Prisma for verbs, the same pool for named statements. */
export type Database = { prisma: PrismaClient; pool: pg.Pool; close(): Promise<void> };

export type DatabaseOptions = {
  /** Connection string of the role `app`. */
  url: string;
  /** Connections at most, for Prisma and named statements together. */
  poolSize?: number;
  /** Shown in pg_stat_activity. */
  applicationName?: string;
  statementTimeoutMs?: number;
  lockTimeoutMs?: number;
};

/** Prepared statements are found again by a name made from their text: 40 hex digits, under PostgreSQL's 63 bytes. */
const statementName = (query: { sql: string }): string =>
  createHash('sha256').update(query.sql).digest('hex').slice(0, 40);

/** Opens the one pool of a process. Nothing connects until the first query. */
export const openDatabase = (options: DatabaseOptions): Database => {
  const pool = new pg.Pool({
    connectionString: options.url,
    max: options.poolSize ?? 10,
    application_name: options.applicationName ?? 'ballfirst',
    connectionTimeoutMillis: 5_000,
    idleTimeoutMillis: 30_000,
    statement_timeout: options.statementTimeoutMs ?? 10_000,
    lock_timeout: options.lockTimeoutMs ?? 3_000,
    idle_in_transaction_session_timeout: 15_000,
  });
  // A connection that dies while idle is dropped by the pool; without a listener it would end the process.
  pool.on('error', () => undefined);
  const adapter = new PrismaPg(pool, { statementNameGenerator: statementName });
  const prisma = new PrismaClient({ adapter });
  return {
    prisma,
    pool,
    close: async () => {
      await prisma.$disconnect();
      await pool.end();
    },
  };
};
