import { constants } from 'node:fs';
import { access } from 'node:fs/promises';
import type { Resources } from '@ballfirst/services/context';
import type { ApiEnv } from '../env.ts';

export type PartName = 'database' | 'site' | 'media';
export type Parts = Readonly<Record<PartName, boolean>>;

const patienceMs = 2_000;

const holds = async (check: () => Promise<unknown>): Promise<boolean> => {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<false>((resolve) => {
    timer = setTimeout(() => resolve(false), patienceMs);
  });
  const done = check().then(
    () => true,
    () => false,
  );
  return Promise.race([done, late]).finally(() => clearTimeout(timer));
};

/** Looks at what this process needs to serve anybody: each part answers within two seconds or counts as away. */
export const lookAtParts = async (env: ApiEnv, resources: Pick<Resources, 'db'>): Promise<Parts> => {
  const [database, site, media] = await Promise.all([
    holds(() => resources.db.pool.query('SELECT 1')),
    holds(() =>
      fetch(env.siteUrl, { method: 'HEAD', redirect: 'manual', signal: AbortSignal.timeout(patienceMs) }),
    ),
    holds(() => access(env.mediaFolder, constants.W_OK)),
  ]);
  return { database, site, media };
};
