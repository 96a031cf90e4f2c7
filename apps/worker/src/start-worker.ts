import { openDatabase } from '@ballfirst/db/database';
import { blobsAt } from '@ballfirst/edges/blobs-at';
import { mailBySmtp } from '@ballfirst/edges/mail-by-smtp';
import { mailToFolder } from '@ballfirst/edges/mail-to-folder';
import { clockFromFile, systemClock } from '@ballfirst/edges/system-clock';
import type { Resources } from '@ballfirst/services/context';
import type { Log } from '@ballfirst/services/ports';
import type { Env } from './env.ts';
import { onPostgres, onRedis } from './queue-backend.ts';
import { openQueues } from './queues.ts';
import { ticks } from './registry.ts';
import { startRelay } from './relay.ts';
import { startWorkers } from './workers.ts';

export type RunningWorker = { stop(): Promise<void> };

/** Joins the adapters, then starts relay, workers and ticks. `stop` gives running jobs a few seconds to end. */
export const startWorker = async (env: Env, log: Log): Promise<RunningWorker> => {
  const db = openDatabase({ url: env.DATABASE_URL, poolSize: 8, applicationName: 'ballfirst-worker' });
  const resources: Resources = {
    db,
    clock: env.CLOCK_OFFSET_FILE ? clockFromFile(env.CLOCK_OFFSET_FILE) : systemClock,
    blobs: blobsAt({ folder: env.MEDIA_FOLDER, mediaUrl: env.MEDIA_URL }),
    mailer: env.SMTP_URL ? mailBySmtp(env.SMTP_URL) : mailToFolder(env.MAIL_FOLDER),
    log,
    publicUrl: env.PUBLIC_URL,
  };
  const backend = env.REDIS_URL ? onRedis(env.REDIS_URL) : onPostgres(env.QUEUE_DATABASE_URL ?? '');
  const queues = openQueues(backend, (error) => log.error({ error: error.message }, 'queue error'));
  const workers = startWorkers(backend, resources, queues, {
    lockMs: env.QUEUE_LOCK_MS,
    stalledMs: env.QUEUE_STALLED_MS,
  });
  const relay = startRelay(resources, queues, env.RELAY_PAUSE_MS);
  for (const tick of ticks) await queues.every(tick, env.TICK_MS);
  return {
    stop: async () => {
      await relay.stop();
      await workers.stop(6_000);
      await queues.close();
      await backend.close();
      await db.close();
    },
  };
};
