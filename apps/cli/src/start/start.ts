import { explainFailure } from '../explain-failure.ts';
import { say, secondsSince, survivesLostTerminal } from '../say.ts';
import { closeService } from './close-service.ts';
import { openService } from './open-service.ts';
import type { Service } from './service.ts';
import { readSettings } from './settings.ts';
import { listenForStop } from './stop-request.ts';

/**
 * `npm start`: everything behind one address, until somebody asks it to stop.
 *
 * @returns exit code
 */
export async function start(root: string, args: readonly string[]): Promise<number> {
  survivesLostTerminal();
  const begun = performance.now();
  const settings = readSettings(process.env, args, root);
  const stop = listenForStop();
  const service: Service = { isStopping: false };
  let failure: unknown;
  try {
    const { url, signIns, afterReady } = await openService(root, settings, service, stop);
    say(`ready ${url}`);
    for (const line of signIns) say(line);
    say(`started in ${secondsSince(begun)}; Ctrl-C stops it`);
    afterReady();
    say(`stopping after ${await stop.asked}`);
  } catch (error) {
    if (!stop.isAsked()) failure = explainFailure(error, settings.home);
  }
  await closeService(service, stop);
  if (failure !== undefined) throw failure;
  say('stopped');
  return 0;
}
