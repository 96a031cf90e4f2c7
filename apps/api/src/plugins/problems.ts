import type { Problem } from '@ballfirst/contracts/problems';
import { problems } from '@ballfirst/contracts/problems';
import type { Resources } from '@ballfirst/services/context';
import type { FastifyReply } from 'fastify';
import plugin from 'fastify-plugin';
import { type Found, problemOf } from '../door/problem-of.ts';

const retryAfterSeconds = 2;

export const sendProblem = (reply: FastifyReply, found: Found): FastifyReply => {
  const problem: Problem = {
    type: `urn:ballfirst:${found.code}`,
    title: problems[found.code][1],
    status: found.status,
    code: found.code,
    detail: found.detail,
    requestId: reply.request.id,
    ...(found.fields.length > 0 ? { fields: [...found.fields] } : {}),
  };
  if (found.status === 503) reply.header('retry-after', retryAfterSeconds);
  // A body that is still on its way would be read as the next request, or waited for without end.
  if (!reply.request.raw.complete) reply.header('connection', 'close');
  return reply
    .code(found.status)
    .header('cache-control', 'no-store')
    .type('application/problem+json')
    .serializer((body: unknown) => JSON.stringify(body))
    .send(problem);
};

/** One error handler for everything: RFC 9457, nothing of the inside. */
export const problemAnswers = plugin<{ resources: Pick<Resources, 'log'> }>(
  async (app, { resources }) => {
    app.setErrorHandler((error, request, reply) => {
      const found = problemOf(error);
      if (found.unforeseen || found.status >= 500) {
        const route = request.routeOptions.url ?? 'none';
        resources.log.error({ requestId: request.id, route, error }, 'a request failed');
      }
      return sendProblem(reply, found);
    });
    app.setNotFoundHandler((_request, reply) => sendProblem(reply, problemOf({ statusCode: 404 })));
  },
  { name: 'problems' },
);
