import { mkdirSync, rmSync } from 'node:fs';
import { setTimeout as after } from 'node:timers/promises';
import { ensureRoles } from '@ballfirst/db/migrate/ensure-roles';
import pg from 'pg';
import { connectionUrl } from '../database/connection-url.ts';
import { forgetUnfinishedDemo, isDemoUnfinished } from '../demo/unfinished.ts';
import { explainFailure } from '../explain-failure.ts';
import type { Home } from '../home/open-home.ts';
import { hireKeeper } from '../postgres/keeper.ts';
import { type Embedded, openEmbedded } from '../postgres/open-embedded.ts';
import type { Server } from '../postgres/run-server.ts';
import { say } from '../say.ts';
import { backOffMs } from '../supervise/back-off.ts';
import type { Service } from './service.ts';
import type { DatabaseUrls } from './settings.ts';

const databaseName = 'ballfirst';

/** Starts the embedded server of the data folder with its roles and its database, and keeps it running. */
export async function serveDatabase(root: string, home: Home, service: Service): Promise<DatabaseUrls> {
  say('starting the database');
  const embedded = await openEmbedded(root, home);
  watch(embedded, embedded.server, home, service);
  const { secrets } = embedded;
  const { databasePort, superuser, ...passwords } = secrets;
  const superuserUrl = connectionUrl('postgres', superuser, databasePort, 'postgres');
  if (isDemoUnfinished(home.folder)) await startOver(superuserUrl, home);
  await ensureRoles({ superuserUrl, databaseName, passwords });
  const urlOf = (role: 'app' | 'owner' | 'queue') =>
    connectionUrl(role, passwords[role], databasePort, databaseName);
  return { app: urlOf('app'), owner: urlOf('owner'), queue: urlOf('queue') };
}

/** An earlier start was cut off while it filled the empty database: nothing of anybody is in it yet. */
async function startOver(superuserUrl: string, home: Home): Promise<void> {
  const client = new pg.Client({ connectionString: superuserUrl });
  await client.connect();
  await client.query(`DROP DATABASE IF EXISTS ${databaseName} WITH (FORCE)`).finally(() => client.end());
  rmSync(home.media, { recursive: true, force: true });
  mkdirSync(home.media);
  forgetUnfinishedDemo(home.folder);
}

/** A server that ends by itself is started again; the other parts connect again by themselves. */
function watch(embedded: Embedded, server: Server, home: Home, service: Service): void {
  service.server = server;
  service.keeper = hireKeeper(server.pid, service.lock);
  void server.ended.then(async () => {
    service.keeper?.dismiss();
    for (let inARow = 1; !service.isStopping; inARow += 1) {
      say(`the database ended; starting it again`);
      try {
        return watch(embedded, await embedded.again(), home, service);
      } catch (error) {
        const told = explainFailure(error, home.folder);
        say(told instanceof Error ? told.message : String(told));
        await after(backOffMs(inARow));
      }
    }
  });
}
