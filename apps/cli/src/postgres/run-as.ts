import type { SpawnOptions } from 'node:child_process';
import type { ServerUser } from './server-user.ts';

/** How to call a server program on a data folder. */
export type RunAs = { readonly pgdata: string; readonly options: SpawnOptions };

/**
 * The working folder is entered before the user is changed, and `/proc/self/cwd` leads back into it without
 * walking down its parents. So root may keep the data below a folder that the server's user cannot enter.
 */
export function runAs(cluster: string, user: ServerUser | undefined): RunAs {
  const options = { cwd: cluster, env: { PATH: process.env.PATH, LC_ALL: 'C', TZ: 'UTC' } };
  if (user === undefined) return { pgdata: cluster, options };
  const pgdata = process.platform === 'linux' ? '/proc/self/cwd' : cluster;
  return { pgdata, options: { ...options, ...user } };
}
