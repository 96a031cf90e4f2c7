import type { Log } from '@ballfirst/services/ports';
import httpProxy from '@fastify/http-proxy';
import type { FastifyInstance } from 'fastify';
import type { ApiEnv } from '../env.ts';
import { pagePolicy } from '../plugins/security-headers.ts';
import { forwardedHeaders } from './forwarded-headers.ts';
import { siteAwayPage } from './site-away-page.ts';

const patienceMs = 15_000;

/** Everything that is not ours goes to the site. Reading only: the browser writes to /api. */
export const forwardToSite = async (
  app: FastifyInstance,
  { env, log }: { env: ApiEnv; log: Log },
): Promise<void> => {
  await app.register(httpProxy, {
    upstream: env.siteUrl,
    prefix: '/',
    httpMethods: ['GET', 'HEAD'],
    websocket: false,
    proxyPayloads: false,
    disableRequestLogging: true,
    config: { page: true },
    undici: { connections: 64, pipelining: 1, headersTimeout: patienceMs, bodyTimeout: patienceMs },
    replyOptions: {
      retryDelay: () => null,
      rewriteRequestHeaders: (request, headers) =>
        forwardedHeaders(headers, {
          requestId: request.id,
          publicUrl: env.publicUrl,
          policy: pagePolicy(request.nonce, env.cookieSecure),
          address: request.ip,
        }),
      onError: (reply, { error }) => {
        const { request } = reply;
        log.error({ requestId: request.id, error }, 'the site does not answer');
        reply.code(503).headers({ 'retry-after': 2, 'cache-control': 'no-store' });
        reply.type('text/html; charset=utf-8').send(siteAwayPage(request.id, request.nonce));
      },
    },
  });
};
