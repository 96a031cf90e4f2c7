import { prepareDatabase } from '../database/prepare-database.ts';
import { openDemo } from '../demo/open-demo.ts';
import { tellHistory } from '../demo/tell-history.ts';
import { takeLock } from '../home/lock.ts';
import { openHome } from '../home/open-home.ts';
import { freePort, whyNotFree } from '../ports.ts';
import { hireKeeper } from '../postgres/keeper.ts';
import { say } from '../say.ts';
import { Sentence } from '../sentence.ts';
import { runPart } from '../supervise/run-part.ts';
import { until } from '../until.ts';
import { planParts } from './parts.ts';
import { answers } from './readiness.ts';
import { serveDatabase } from './serve-database.ts';
import type { Service } from './service.ts';
import type { StartSettings } from './settings.ts';
import type { StopRequest } from './stop-request.ts';

export type Opened = {
  readonly url: string;
  readonly signIns: readonly string[];
  /** What is left to do beside the running service. */
  readonly afterReady: () => void;
};

const readyWithinMs = 60_000;

/**
 * Opens the service step by step and returns when a person can use it.
 *
 * @param service filled as the parts start
 * @throws Sentence or a system error; what had started by then stands in `service`
 */
export async function openService(
  root: string,
  settings: StartSettings,
  service: Service,
  stop: StopRequest,
): Promise<Opened> {
  const url = `http://127.0.0.1:${settings.port}`;
  const home = openHome(settings.home);
  service.lock = takeLock(home.folder, url);
  await demandPort(settings.port, service.lock.wasLeft ? 12_000 : 0);
  const addresses = { url, port: settings.port, sitePort: await freePort() };
  const goOn = () => {
    if (stop.isAsked()) throw new Sentence('Stopped while it was starting.');
  };

  const plans = planParts(root, home, addresses);
  service.site = runPart(plans.site);
  if (settings.database !== undefined) service.keeper = hireKeeper(0, service.lock);
  const database = settings.database ?? (await serveDatabase(root, home, service));
  goOn();
  say('bringing the database up to date');
  await prepareDatabase(root, database);
  goOn();
  say('starting api, worker and site');
  service.api = runPart(plans.api(database));
  // The worker comes after the demo: its past is no news to anybody.
  const signIns = await openDemo({ root, home, url, database, isWanted: settings.withDemo });
  goOn();
  service.worker = runPart(plans.worker(database));
  await untilReady(service, addresses, stop);
  goOn();
  for (const part of [service.api, service.worker, service.site]) part.settled();
  const afterReady = () => {
    const history = tellHistory(root, home, url, database.app);
    if (history !== undefined) service.history = history;
  };
  return { url, signIns, afterReady };
}

/** @param withinMs how long the port may still be held by the last requests of a copy that was killed */
async function demandPort(port: number, withinMs: number): Promise<void> {
  let why: string | undefined;
  await until(async () => {
    why = await whyNotFree(port);
    return why !== 'EADDRINUSE';
  }, withinMs);
  if (why === 'EADDRINUSE') {
    throw new Sentence(
      `Port ${port} is taken by another program: choose one with PORT=${port + 1} npm start.`,
    );
  }
  if (why !== undefined) {
    throw new Sentence(`Port ${port} cannot be used here (${why}): choose one above 1023 with PORT.`);
  }
}

async function untilReady(
  service: Service,
  addresses: { readonly url: string; readonly sitePort: number },
  stop: StopRequest,
): Promise<void> {
  const parts = [service.api, service.worker, service.site].filter((part) => part !== undefined);
  const bothAnswer = Promise.all([
    answers(`${addresses.url}/readyz`, 300, readyWithinMs),
    // Through the door, as a person comes: the site has its nonce from there.
    answers(`${addresses.url}/sign-in`, 500, readyWithinMs),
  ]);
  const outcome = await Promise.race([bothAnswer, stop.asked, ...parts.map((part) => part.failure)]);
  if (typeof outcome === 'string') return;
  if (!outcome.every(Boolean)) {
    const silent = outcome[0] ? 'site' : 'api';
    throw new Sentence(`The ${silent} does not answer after ${readyWithinMs / 1000} s: its log says why.`);
  }
}
