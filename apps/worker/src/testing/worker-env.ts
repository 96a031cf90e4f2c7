import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { TestDatabase } from '@ballfirst/testing/test-database';
import { type Env, readEnv } from '../env.ts';

/**
 * Settings of a worker for one test file, with short locks and folders of its own. With REDIS_URL in the environment the
 * queue is there, in a numbered database of its own; else in PostgreSQL.
 */
export const workerEnv = async (database: TestDatabase, redisDatabase: number): Promise<Env> => {
  const folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-worker-'));
  const redis = process.env.REDIS_URL;
  return readEnv({
    DATABASE_URL: database.appUrl,
    ...(redis
      ? { REDIS_URL: `${redis.replace(/\/$/, '')}/${redisDatabase}` }
      : { QUEUE_DATABASE_URL: database.queueUrl }),
    MEDIA_FOLDER: path.join(folder, 'media'),
    MAIL_FOLDER: path.join(folder, 'mail'),
    PUBLIC_URL: 'http://127.0.0.1:4600',
    CLOCK_OFFSET_FILE: path.join(folder, 'clock'),
    QUEUE_LOCK_MS: '2000',
    QUEUE_STALLED_MS: '2000',
    TICK_MS: '1000',
    RELAY_PAUSE_MS: '50',
  });
};
