import { setTimeout as pause } from 'node:timers/promises';
import { jsonLog } from '@ballfirst/edges/log';
import { buildApp } from './build-app.ts';
import { readEnv } from './env.ts';
import { openResources } from './open-resources.ts';

const env = readEnv(process.env);
const log = jsonLog('api', process.stderr);
const resources = openResources(env, log);
const app = await buildApp({ env, resources });
const address = await app.listen({ host: env.host, port: env.port });
log.info({ address }, 'the door is open');

let stopping = false;
/** Not ready at once, then drained, then closed; after a hard deadline the process ends whatever still runs. */
const stop = async (why: string): Promise<void> => {
  if (stopping) return;
  stopping = true;
  log.info({ why }, 'the door closes');
  setTimeout(() => process.exit(1), env.stopWithinMs).unref();
  app.beginStopping();
  await pause(env.drainMs);
  // Closing drops idle connections once; one that was answering then becomes idle later and would be waited for.
  setInterval(() => app.server.closeIdleConnections(), 50).unref();
  await app.close();
  await resources.db.close();
  process.exit(0);
};
process.on('SIGTERM', () => void stop('SIGTERM'));
process.on('SIGINT', () => void stop('SIGINT'));
if (env.watchStdin) {
  process.stdin
    .on('end', () => void stop('the parent is gone'))
    .on('error', () => void stop('the parent is gone'));
  process.stdin.resume();
}
