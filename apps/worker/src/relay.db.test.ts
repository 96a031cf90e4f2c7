import { withAcademy } from '@ballfirst/db/with-academy';
import { blobsOnDisk } from '@ballfirst/edges/blobs-on-disk';
import { silentLog } from '@ballfirst/edges/log';
import { mailToFolder } from '@ballfirst/edges/mail-to-folder';
import { systemClock } from '@ballfirst/edges/system-clock';
import type { Resources } from '@ballfirst/services/context';
import { createStudent } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Env } from './env.ts';
import type { NewJob } from './job.ts';
import { onPostgres, onRedis, type QueueBackend } from './queue-backend.ts';
import { openQueues, type Queues } from './queues.ts';
import { relayOnce } from './relay.ts';
import { announce } from './testing/announce.ts';
import { workerEnv } from './testing/worker-env.ts';
import { startWorkers, type Workers } from './workers.ts';

describe('from the outbox to an effect', () => {
  let database: TestDatabase;
  let env: Env;
  let resources: Resources;
  let backend: QueueBackend;
  let queues: Queues;
  let workers: Workers | undefined;

  beforeAll(async () => {
    database = await testDatabase();
    env = await workerEnv(database, 2);
    resources = {
      db: database.db,
      clock: systemClock,
      blobs: blobsOnDisk(env.MEDIA_FOLDER),
      mailer: mailToFolder(env.MAIL_FOLDER),
      log: silentLog,
      publicUrl: env.PUBLIC_URL,
    };
    backend = env.REDIS_URL ? onRedis(env.REDIS_URL) : onPostgres(env.QUEUE_DATABASE_URL ?? '');
    queues = openQueues(backend, () => undefined);
  });
  afterAll(async () => {
    await workers?.stop(5_000);
    await queues.close();
    await backend.close();
    await database.close();
  });

  const letters = (academyId: string) =>
    withAcademy(database.db, academyId, (tx) => tx.mail.findMany({ where: { academyId } }));

  it('writes one letter though the relay died after adding and before marking, and adds again', async () => {
    const student = await createStudent(database.db);
    const { academyId } = student;
    await announce(database.db, academyId, 'student.joined', { studentId: student.id });

    const dying: Queues = {
      ...queues,
      add: async (jobs: readonly NewJob[]) => {
        await queues.add(jobs);
        throw new Error('the relay is gone');
      },
    };
    await expect(relayOnce(resources, dying)).rejects.toThrow('the relay is gone');
    const later: Resources = { ...resources, clock: { now: () => new Date(Date.now() + 60_000) } };
    expect(await relayOnce(later, queues)).toBe(1);
    expect(await relayOnce(later, queues)).toBe(0);

    workers = startWorkers(backend, resources, queues, { lockMs: 2_000, stalledMs: 2_000 });
    await vi.waitFor(async () => expect(await letters(academyId)).toHaveLength(1), { timeout: 60_000 });
    // A second event behind the first proves that the queue has moved past any second job of the first.
    const other = await createStudent(database.db, { academyId });
    await announce(database.db, academyId, 'student.joined', { studentId: other.id });
    await relayOnce(resources, queues);
    await vi.waitFor(async () => expect(await letters(academyId)).toHaveLength(2), { timeout: 60_000 });
  }, 60_000);
});
