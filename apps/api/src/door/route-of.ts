import type { Operation } from '@ballfirst/contracts/operation';
import type {} from '@fastify/rate-limit';
import type { RouteOptions } from 'fastify';

const timeoutMs = 10_000;
const bodyLimitBytes = 256 * 1024;

/** `/api/submissions/{id}` as the router writes it: `/api/submissions/:id`. */
export const routerPath = (path: string): string => path.replace(/\{(\w+)\}/g, ':$1');

/** Tries a minute from one address where passwords are guessed; services count by account beside it. */
const triesAMinute: Readonly<Record<string, number>> = { signIn: 60, joinAcademy: 30 };

/** What the router needs of an operation: address, checks of what comes in and goes out, limits. */
export const routeOf = (it: Operation): Omit<RouteOptions, 'handler'> => {
  const max = triesAMinute[it.id];
  return {
    method: it.method,
    url: routerPath(it.path),
    schema: {
      ...(it.params ? { params: it.params } : {}),
      ...(it.query ? { querystring: it.query } : {}),
      ...(it.body ? { body: it.body } : {}),
      ...(it.status === 204 ? {} : { response: { [it.status]: it.reply } }),
    },
    bodyLimit: it.bodyLimitBytes ?? bodyLimitBytes,
    handlerTimeout: it.timeoutMs ?? timeoutMs,
    ...(max === undefined ? {} : { config: { rateLimit: { max, timeWindow: '1 minute' } } }),
  };
};
