import { type SpawnOptions, spawnSync } from 'node:child_process';
import type { ServerUser } from './server-user.ts';

/** How to call a server program on a data folder. */
export type RunAs = { readonly pgdata: string; readonly options: SpawnOptions };

/**
 * Root may keep the data below a folder that the server's user cannot enter, and often does. The working folder is
 * entered before the user is changed, and `/proc/self/cwd` leads back into it without walking down its parents.
 * (Servers before 16 leave their working folder while they start: they need a way in.)
 */
export function runAs(cluster: string, user: ServerUser | undefined): RunAs {
  const options = { cwd: cluster, env: { PATH: process.env.PATH, LC_ALL: 'C', TZ: 'UTC' } };
  if (user === undefined) return { pgdata: cluster, options };
  const isShut = process.platform === 'linux' && !canEnter(cluster, user);
  return { pgdata: isShut ? '/proc/self/cwd' : cluster, options: { ...options, ...user } };
}

function canEnter(folder: string, user: ServerUser): boolean {
  return (
    spawnSync('/bin/sh', ['-c', 'cd -- "$1"', 'sh', folder], { ...user, cwd: '/', stdio: 'ignore' })
      .status === 0
  );
}
