import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Home } from '../home/open-home.ts';
import { childEnv } from '../supervise/child-env.ts';
import type { PartPlan } from '../supervise/run-part.ts';
import type { DatabaseUrls } from './settings.ts';

export type Addresses = { readonly url: string; readonly port: number; readonly sitePort: number };

/** What each part is told. Nothing but this differs between one machine and many. */
export function planParts(root: string, home: Home, addresses: Addresses, database: DatabaseUrls) {
  const watch = pathToFileURL(join(root, 'apps', 'cli', 'dist', 'watch-parent.mjs')).href;
  const plan = (
    name: string,
    args: readonly string[],
    cwd: string,
    env: Record<string, string>,
  ): PartPlan => ({
    name,
    args: ['--import', watch, ...args],
    cwd,
    env: childEnv(process.env, env),
    log: join(home.logs, `${name}.log`),
  });
  const shared = {
    DATABASE_URL: database.app,
    MEDIA_FOLDER: home.media,
    MAIL_FOLDER: home.mail,
    PUBLIC_URL: process.env.PUBLIC_URL || addresses.url,
  };
  const app = (name: string) => join(root, 'apps', name, 'dist', 'main.mjs');
  const next = join(root, 'node_modules', 'next', 'dist', 'bin', 'next');
  return {
    api: plan('api', [app('api')], root, {
      ...shared,
      PORT: String(addresses.port),
      SITE_URL: `http://127.0.0.1:${addresses.sitePort}`,
      DATABASE_DIRECT_URL: process.env.DATABASE_DIRECT_URL || database.app,
    }),
    worker: plan('worker', [app('worker')], root, { ...shared, QUEUE_DATABASE_URL: database.queue }),
    site: plan(
      'site',
      [next, 'start', '-H', '127.0.0.1', '-p', String(addresses.sitePort)],
      join(root, 'apps', 'site'),
      {
        PORT: String(addresses.sitePort),
        API_URL: addresses.url,
        PUBLIC_URL: addresses.url,
      },
    ),
  };
}
