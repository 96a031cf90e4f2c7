import { randomBytes } from 'node:crypto';
import type { FastifyRequest } from 'fastify';
import plugin from 'fastify-plugin';
import type { ApiEnv } from '../env.ts';

declare module 'fastify' {
  interface FastifyContextConfig {
    /** True for routes that answer with pages; everything else is data. */
    page?: boolean;
  }
  interface FastifyRequest {
    /** Made at the door for each request; allows this answer's own scripts and no others. */
    nonce: string;
  }
}

/** Pages: scripts by nonce only. Style attributes are allowed, style elements by nonce; `blob:` is the clip player. */
export const pagePolicy = (nonce: string, https: boolean): string =>
  [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'`,
    "script-src-attr 'none'",
    `style-src 'self' 'nonce-${nonce}'`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "media-src 'self' blob:",
    "connect-src 'self'",
    "font-src 'self'",
    "worker-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
    ...(https ? ['upgrade-insecure-requests'] : []),
  ].join('; ');

/** Everything that is not a page: data that a browser must never run or frame. */
export const dataPolicy = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

const isData = (request: FastifyRequest): boolean => request.routeOptions.config.page !== true;

const fixed: Readonly<Record<string, string>> = {
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy':
    'camera=(self), microphone=(self), geolocation=(), payment=(), usb=(), display-capture=()',
};

/** What every answer carries, whoever made it; also read by routes that answer on the raw socket. */
export const headersOfEveryAnswer = (request: FastifyRequest, https: boolean): Record<string, string> => ({
  ...fixed,
  ...(https ? { 'strict-transport-security': 'max-age=31536000' } : {}),
  'content-security-policy': isData(request) ? dataPolicy : pagePolicy(request.nonce, https),
  'x-request-id': request.id,
});

/** Sets the headers last, so that an answer of the site cannot weaken them. */
export const securityHeaders = plugin<{ env: Pick<ApiEnv, 'cookieSecure'> }>(
  async (app, { env }) => {
    app.decorateRequest('nonce', '');
    app.addHook('onRequest', async (request) => {
      request.nonce = randomBytes(16).toString('base64');
    });
    app.addHook('onSend', async (request, reply) => {
      reply.headers(headersOfEveryAnswer(request, env.cookieSecure));
      reply.removeHeader('x-powered-by');
      reply.removeHeader('server');
      if (isData(request) && !reply.hasHeader('cache-control')) reply.header('cache-control', 'no-store');
    });
  },
  { name: 'security-headers' },
);
