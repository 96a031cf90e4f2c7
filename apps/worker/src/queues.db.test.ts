import { silentLog } from '@ballfirst/edges/log';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import type { Queue } from 'bullmq';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { sealAudit } from './jobs/seal-audit.ts';
import { onPostgres, onRedis, type QueueBackend } from './queue-backend.ts';
import { openQueues } from './queues.ts';
import { workerEnv } from './testing/worker-env.ts';
import { startWorkers } from './workers.ts';

let database: TestDatabase;
let world: SystemWorld;
let backend: QueueBackend;

beforeAll(async () => {
  database = await testDatabase();
  world = systemWorld(database.db, new Date());
  const env = await workerEnv(database, 5);
  backend = env.REDIS_URL ? onRedis(env.REDIS_URL) : onPostgres(env.QUEUE_DATABASE_URL ?? '');
});
afterAll(async () => {
  await backend.close();
  await database.close();
});

it('keeps nothing of a tick that is done', async () => {
  const done = vi.fn();
  const log = { ...silentLog, info: done };
  const queues = openQueues(backend, () => undefined);
  const { resources } = world.contextOf('018f0000-0000-7000-8000-000000000001');
  const workers = startWorkers(backend, { ...resources, log }, queues, { lockMs: 2_000, stalledMs: 2_000 });
  await queues.every(sealAudit, 200);
  await vi.waitFor(() => expect(done.mock.calls.length).toBeGreaterThanOrEqual(3), { timeout: 60_000 });
  await workers.stop(5_000);
  // Both backends give BullMQ's own queue.
  const queue = backend.queue(sealAudit.queue) as unknown as Queue;
  expect(await queue.getCompletedCount()).toBe(0);
  await queue.close();
  await queues.close();
});
