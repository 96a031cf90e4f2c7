import type { Resources } from '@ballfirst/services/context';
import type { FastifyInstance } from 'fastify';
import type { ApiEnv } from '../env.ts';
import { lookAtParts } from './parts.ts';
import { createProcessGauges } from './process-gauges.ts';
import { createRequestCounts } from './request-counts.ts';

declare module 'fastify' {
  interface FastifyInstance {
    /** From then on /readyz says no, while everything else goes on. */
    beginStopping(): void;
  }
}

/** `/livez`: the process answers. `/readyz`: it can serve, part by part. `/metrics`: counts, for an operator. */
export const healthRoutes = (app: FastifyInstance, deps: { env: ApiEnv; resources: Resources }): void => {
  const counts = createRequestCounts();
  const gauges = createProcessGauges();
  const { pool } = deps.resources.db;
  let stopping = false;
  app.decorate('beginStopping', () => {
    stopping = true;
  });
  app.addHook('onClose', async () => gauges.stop());
  app.addHook('onRequest', async (request, reply) => {
    const begun = process.hrtime.bigint();
    reply.raw.once('close', () => {
      const seconds = Number(process.hrtime.bigint() - begun) / 1e9;
      const route = request.routeOptions.url ?? 'none';
      const { statusCode: status } = reply.raw;
      counts.add({ method: request.method, route, status, seconds });
      if (route !== '/livez' && route !== '/readyz') {
        const ms = Math.round(seconds * 1000);
        deps.resources.log.info(
          { requestId: request.id, method: request.method, route, status, ms },
          'answered',
        );
      }
    });
  });
  app.get('/livez', () => ({ live: true }));
  app.get('/readyz', async (_request, reply) => {
    const parts = await lookAtParts(deps.env, deps.resources);
    const ready = !stopping && Object.values(parts).every(Boolean);
    return reply.code(ready ? 200 : 503).send({ ready, stopping, parts });
  });
  app.get('/metrics', (_request, reply) => {
    const database = { total: pool.totalCount, idle: pool.idleCount, waiting: pool.waitingCount };
    return reply.type('text/plain; version=0.0.4').send(`${counts.text()}\n${gauges.text({ database })}\n`);
  });
};
