import { jsonLog } from '@ballfirst/edges/log';
import { readEnv } from './env.ts';
import { startWorker } from './start-worker.ts';

const log = jsonLog('worker', process.stderr);
const worker = await startWorker(readEnv(process.env), log);
log.info({}, 'worker ready');

let stopping = false;
const stop = async (why: string): Promise<void> => {
  if (stopping) return;
  stopping = true;
  log.info({ why }, 'worker stops');
  setTimeout(() => process.exit(1), 10_000).unref();
  await worker.stop();
  process.exit(0);
};
process.on('SIGTERM', () => void stop('SIGTERM'));
process.on('SIGINT', () => void stop('SIGINT'));
