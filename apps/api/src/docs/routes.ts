import type { FastifyInstance } from 'fastify';
import { openApiDocument } from '../openapi/document.ts';
import { docsPage } from './page.ts';

/** The OpenAPI document for programs, and the same for people. */
export const docsRoutes = (app: FastifyInstance): void => {
  const document = openApiDocument();
  const text = `${JSON.stringify(document, null, 2)}\n`;
  app.get('/api/openapi.json', (_request, reply) =>
    reply.type('application/json; charset=utf-8').header('cache-control', 'public, max-age=300').send(text),
  );
  app.get('/api/docs', { config: { page: true } }, (request, reply) =>
    reply
      .type('text/html; charset=utf-8')
      .header('cache-control', 'no-store')
      .send(docsPage(document, request.nonce)),
  );
};
