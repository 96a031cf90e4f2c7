import { createPostgresBackend, type Processor, Queue, Worker, type WorkerOptions } from 'bullmq';
import pg from 'pg';
import type { QueueName } from './job.ts';

/** Where the queues live. Both kinds answer the same calls; what differs is an address. */
export type QueueBackend = {
  readonly kind: 'postgres' | 'redis';
  queue(name: QueueName): Queue;
  worker(name: QueueName, process: Processor, options: Omit<WorkerOptions, 'connection'>): Worker;
  close(): Promise<void>;
};

const jobDefaults = {
  attempts: 8,
  backoff: { type: 'exponential', delay: 1_000, jitter: 0.3 },
  removeOnComplete: { age: 24 * 3600, count: 10_000 },
  removeOnFail: { age: 14 * 24 * 3600 },
} as const;

/** BullMQ on PostgreSQL as role `queue`: one pool for all queues; each queue or worker keeps one connection listening. */
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
  return {
    kind: 'postgres',
    queue: (name) =>
      new Queue(name, { connection: pool, defaultJobOptions: jobDefaults }, createPostgresBackend),
    worker: (name, process, options) =>
      new Worker(name, process, { ...options, connection: pool }, createPostgresBackend),
    close: () => pool.end(),
  };
};

/** BullMQ on Redis or Valkey. */
export const onRedis = (url: string): QueueBackend => ({
  kind: 'redis',
  queue: (name) =>
    new Queue(name, { connection: { url, maxRetriesPerRequest: null }, defaultJobOptions: jobDefaults }),
  worker: (name, process, options) =>
    new Worker(name, process, { ...options, connection: { url, maxRetriesPerRequest: null } }),
  close: async () => undefined,
});
