import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Home } from '../home/open-home.ts';
import { childEnv } from '../supervise/child-env.ts';
import type { PartPlan } from '../supervise/run-part.ts';
import type { DatabaseUrls } from './settings.ts';
import { sparingArguments, sparingEnv } from './sparing.ts';

export type Addresses = { readonly url: string; readonly port: number; readonly sitePort: number };

/** What each part is told. Nothing but this differs between one machine and many. The site needs no database. */
export function planParts(root: string, home: Home, addresses: Addresses) {
  const watch = pathToFileURL(join(root, 'apps', 'cli', 'dist', 'watch-parent.mjs')).href;
  const plan = (
    name: string,
    args: readonly string[],
    env: Record<string, string>,
    cwd = root,
  ): PartPlan => ({
    name,
    args: ['--import', watch, ...args],
    cwd,
    env: childEnv(process.env, env),
    log: join(home.logs, `${name}.log`),
  });
  const publicUrl = process.env.PUBLIC_URL || addresses.url;
  const shared = (database: DatabaseUrls) => ({
    DATABASE_URL: database.app,
    MEDIA_FOLDER: home.media,
    MAIL_FOLDER: home.mail,
    PUBLIC_URL: publicUrl,
  });
  const script = (app: string) => join(root, 'apps', app, 'dist', 'main.mjs');
  const next = join(root, 'node_modules', 'next', 'dist', 'bin', 'next');
  const sitePort = String(addresses.sitePort);
  return {
    api: (database: DatabaseUrls) =>
      plan('api', [...sparingArguments, script('api')], {
        ...sparingEnv,
        ...shared(database),
        PORT: String(addresses.port),
        SITE_URL: `http://127.0.0.1:${sitePort}`,
        DATABASE_DIRECT_URL: process.env.DATABASE_DIRECT_URL || database.app,
      }),
    worker: (database: DatabaseUrls) =>
      plan('worker', [script('worker')], { ...shared(database), QUEUE_DATABASE_URL: database.queue }),
    site: plan(
      'site',
      [next, 'start', '-H', '127.0.0.1', '-p', sitePort],
      { PORT: sitePort, API_URL: addresses.url, PUBLIC_URL: publicUrl },
      join(root, 'apps', 'site'),
    ),
  };
}
