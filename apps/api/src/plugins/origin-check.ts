import { ProblemError } from '@ballfirst/contracts/problems';
import plugin from 'fastify-plugin';
import type { ApiEnv } from '../env.ts';

const reading = new Set(['GET', 'HEAD', 'OPTIONS']);

/** The origins pages of ours come from: the public one; on this machine, by any of the machine's own names. */
const ourOrigins = (env: Pick<ApiEnv, 'publicUrl' | 'publicIsThisMachine'>): Set<string> => {
  if (!env.publicIsThisMachine) return new Set([env.publicUrl]);
  const { protocol, port } = new URL(env.publicUrl);
  const at = port === '' ? '' : `:${port}`;
  return new Set(['127.0.0.1', 'localhost', '[::1]'].map((host) => `${protocol}//${host}${at}`));
};

/**
 * Whether a write may come from where it says it comes from. Every browser sends at least one of the two headers with a
 * write and lets no page change them; a request with neither is from a program, which carries no one's cookie but its own.
 */
export const comesFromUs = (
  headers: { origin?: string | undefined; 'sec-fetch-site'?: string | string[] | undefined },
  ours: ReadonlySet<string>,
): boolean => {
  const site = headers['sec-fetch-site'];
  if (site !== undefined) return site === 'same-origin';
  return headers.origin === undefined || ours.has(headers.origin);
};

/** Refuses writes that another site's page started (beside SameSite=Lax: two locks, one door). */
export const originCheck = plugin<{ env: ApiEnv }>(
  async (app, { env }) => {
    const ours = ourOrigins(env);
    app.addHook('onRequest', async (request) => {
      if (!reading.has(request.method) && !comesFromUs(request.headers, ours))
        throw new ProblemError('wrong-origin');
    });
  },
  { name: 'origin-check' },
);
