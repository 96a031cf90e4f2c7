import { randomBytes } from 'node:crypto';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connectionUrl } from '../database/connection-url.ts';
import { freePort } from '../ports.ts';
import { findBinaries } from '../postgres/binaries.ts';
import { type Cluster, initialiseCluster } from '../postgres/initialise-cluster.ts';
import { hireKeeper } from '../postgres/keeper.ts';
import { runServer } from '../postgres/run-server.ts';
import { chooseServerUser } from '../postgres/server-user.ts';

export type TestServer = { readonly superuserUrl: string; readonly stop: () => Promise<void> };

/** Nothing here outlives the run, so nothing is forced to disk. */
const careless = ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off', 'max_connections=120'];

/**
 * One PostgreSQL for a run of tests, in a temporary folder that goes with it, even when we are killed.
 *
 * @param postgresBin `bin` folder of another PostgreSQL than the embedded one
 */
export async function startTestServer(root: string, postgresBin: string | undefined): Promise<TestServer> {
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-test-'));
  // The user the server runs as must get through.
  chmodSync(folder, 0o711);
  const clear = () => rmSync(folder, { recursive: true, force: true });
  try {
    const user = chooseServerUser(join(folder, 'database'));
    const cluster: Cluster = {
      folder: join(folder, 'database'),
      user,
      binaries: findBinaries(root, user, postgresBin),
    };
    const password = randomBytes(16).toString('hex');
    await initialiseCluster(cluster, password, true);
    const server = await runServer(cluster, await freePort(), join(folder, 'database.log'), careless);
    const keeper = hireKeeper(server.pid, undefined, folder);
    return {
      superuserUrl: connectionUrl('postgres', password, server.port, 'postgres'),
      stop: async () => {
        await server.stop();
        keeper.dismiss();
        clear();
      },
    };
  } catch (error) {
    clear();
    throw error;
  }
}
