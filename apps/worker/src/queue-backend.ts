import {
  createPostgresBackend,
  type PostgresConnectionOptions,
  type Processor,
  Queue,
  Worker,
  type WorkerOptions,
} from 'bullmq';
import pg from 'pg';
import type { QueueName } from './job.ts';

/** What we use of BullMQ's queue; the same on both backends. */
export type OpenQueue = {
  addBulk(jobs: { name: string; data: unknown; opts: { jobId: string } }[]): Promise<unknown>;
  upsertJobScheduler(
    id: string,
    repeat: { every: number },
    template: { name: string; data: unknown; opts: { attempts: number; removeOnComplete: boolean } },
  ): Promise<unknown>;
  on(event: 'error', listener: (error: Error) => void): unknown;
  close(): Promise<void>;
};
export type OpenWorker = {
  on(event: 'error', listener: (error: Error) => void): unknown;
  on(event: 'stalled', listener: (id: string) => void): unknown;
  on(
    event: 'failed',
    listener: (queued: { name: string; id?: string | undefined } | undefined, error: Error) => void,
  ): unknown;
  close(): Promise<void>;
};

/** Where the queues live. Both kinds answer the same calls; what differs is an address. */
export type QueueBackend = {
  readonly kind: 'postgres' | 'redis';
  queue(name: QueueName): OpenQueue;
  worker(name: QueueName, process: Processor, options: Omit<WorkerOptions, 'connection'>): OpenWorker;
  close(): Promise<void>;
};

const jobDefaults = {
  attempts: 8,
  backoff: { type: 'exponential', delay: 1_000, jitter: 0.3 },
  removeOnComplete: { age: 24 * 3600, count: 10_000 },
  removeOnFail: { age: 14 * 24 * 3600 },
} as const;

/** BullMQ on PostgreSQL as role `queue`: one pool for all; each queue or worker keeps one connection listening. */
export const onPostgres = (url: string): QueueBackend => {
  const pool = new pg.Pool({
    connectionString: url,
    max: 12,
    keepAlive: true,
    application_name: 'ballfirst-queue',
    options: '-c search_path=bullmq',
  });
  // A connection that dies while idle is dropped by the pool; without a listener it would end the process.
  pool.on('error', () => undefined);
  // BullMQ describes the pool by a loose type of its own, which the strict one of pg does not fit.
  const connection = pool as unknown as PostgresConnectionOptions;
  return {
    kind: 'postgres',
    queue: (name) => new Queue(name, { connection, defaultJobOptions: jobDefaults }, createPostgresBackend),
    worker: (name, process, options) =>
      new Worker(name, process, { ...options, connection }, createPostgresBackend),
    close: () => pool.end(),
  };
};

/** BullMQ on Redis or Valkey. */
export const onRedis = (url: string): QueueBackend => {
  const connection = { url, maxRetriesPerRequest: null };
  return {
    kind: 'redis',
    queue: (name) => new Queue(name, { connection, defaultJobOptions: jobDefaults }),
    worker: (name, process, options) => new Worker(name, process, { ...options, connection }),
    close: async () => undefined,
  };
};
