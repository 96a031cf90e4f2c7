import { operations } from '@ballfirst/contracts/http/operations';
import type { Operation } from '@ballfirst/contracts/operation';
import { Problem } from '@ballfirst/contracts/problem-body';
import { describeOperation } from './describe-operation.ts';
import { createSchemaWriter, type JsonSchema } from './schema-writer.ts';

export type OpenApiDocument = {
  openapi: '3.1.0';
  info: { title: string; version: string; description: string };
  tags: { name: string }[];
  paths: Record<string, Record<string, JsonSchema>>;
  components: JsonSchema;
};

const description = [
  'Remote golf lessons for an academy. Sign in with `POST /api/sign-in`; the session is a cookie.',
  'Errors are RFC 9457 problems (`application/problem+json`) with a stable `code`.',
  'An id of another academy and an id that never was get the same 404.',
  'What creates asks for an `Idempotency-Key`: the same key and body again give the same answer, byte by byte.',
  'What two people may edit answers with a strong `ETag` (the version in quotes) and asks for it in `If-Match`.',
  'Pages go by key: pass `next` back as `after`; null is the end.',
  'Videos go to `/uploads` by tus 1.0 (metadata: filename, view, swingLength, filetype); what was made of them',
  'is read under `/media/clips/{id}/`, with Range.',
].join('\n');

/** The OpenAPI 3.1 document of the whole API, from the operations table alone. */
export const openApiDocument = (): OpenApiDocument => {
  const writer = createSchemaWriter();
  const paths: OpenApiDocument['paths'] = {};
  const all: readonly Operation[] = Object.values(operations);
  for (const it of all) {
    paths[it.path] = { ...paths[it.path], [it.method.toLowerCase()]: describeOperation(it, writer) };
  }
  writer.write(Problem);
  return {
    openapi: '3.1.0',
    info: { title: 'Ballfirst', version: '0.1.0', description },
    tags: [...new Set(all.map((it) => it.tag))].map((name) => ({ name })),
    paths,
    components: {
      schemas: writer.collected(),
      securitySchemes: {
        session: {
          type: 'apiKey',
          in: 'cookie',
          name: '__Host-ballfirst',
          description: 'Named `ballfirst` where the service is reached by plain http on this machine.',
        },
      },
    },
  };
};
