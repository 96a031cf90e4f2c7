import { createLog } from '@ballfirst/edges/log';
import { readEnv } from './env.ts';
import { startWorker } from './start-worker.ts';

const env = readEnv(process.env);
const log = createLog({ name: 'worker', level: env.LOG_LEVEL });
const worker = await startWorker(env, log);
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
if (env.BALLFIRST_WATCH_STDIN === '1') {
  process.stdin.on('end', () => void stop('parent gone')).on('error', () => void stop('parent gone'));
  process.stdin.resume();
}
