import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { Home } from '../home/open-home.ts';
import { keepSecrets, readSecrets, type Secrets } from '../home/secrets.ts';
import { freePort, whyNotFree } from '../ports.ts';
import { Sentence } from '../sentence.ts';
import { findBinaries } from './binaries.ts';
import { type Cluster, initialiseCluster } from './initialise-cluster.ts';
import { runServer, type Server } from './run-server.ts';
import { chooseServerUser } from './server-user.ts';
import { settleLeftover } from './settle-leftover.ts';

export type Embedded = {
  readonly server: Server;
  readonly secrets: Secrets;
  /** Starts the same server once more, after it ended by itself. */
  readonly again: () => Promise<Server>;
};

/** Starts the PostgreSQL of a data folder, made on first use, on a port that stays the same while it is free. */
export async function openEmbedded(root: string, home: Home): Promise<Embedded> {
  const folder = home.database;
  const kept = readSecrets(home.folder);
  if (kept.databasePort === 0 && existsSync(join(folder, 'PG_VERSION'))) {
    throw new Sentence(
      `${home.folder} has a database but no secrets.json with its passwords: put that file back from your copy.`,
    );
  }
  const user = chooseServerUser(folder);
  const cluster: Cluster = { folder, user, binaries: findBinaries(root, user) };
  await settleLeftover(folder);
  const isSame = kept.databasePort > 0 && (await whyNotFree(kept.databasePort)) === undefined;
  const secrets = { ...kept, databasePort: isSame ? kept.databasePort : await freePort() };
  if (!isSame) keepSecrets(home.folder, secrets);
  await initialiseCluster(cluster, secrets.superuser);
  const run = () => runServer(cluster, secrets.databasePort, join(home.logs, 'database.log'));
  return {
    server: await run(),
    secrets,
    again: async () => {
      await settleLeftover(folder);
      return run();
    },
  };
}
