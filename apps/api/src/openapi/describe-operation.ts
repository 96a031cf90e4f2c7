import type { Operation } from '@ballfirst/contracts/operation';
import { Problem } from '@ballfirst/contracts/problem-body';
import type { z } from 'zod';
import type { JsonSchema, SchemaWriter } from './schema-writer.ts';

const problemAnswer = (writer: SchemaWriter, description: string): JsonSchema => ({
  description,
  content: { 'application/problem+json': { schema: writer.write(Problem) } },
});

const parametersOf = (place: 'path' | 'query', schema: z.ZodObject, writer: SchemaWriter): JsonSchema[] =>
  Object.entries(schema.shape).map(([name, part]) => ({
    name,
    in: place,
    required: place === 'path' || !part.safeParse(undefined).success,
    schema: writer.write(part),
  }));

const header = (name: string, description: string): JsonSchema => ({
  name,
  in: 'header',
  required: true,
  description,
  schema: { type: 'string' },
});

const problemsOf = (it: Operation, writer: SchemaWriter): JsonSchema => {
  const signedOnly = !it.who.includes('anyone');
  const byRole = signedOnly && !it.who.includes('signed-in');
  return {
    ...(it.body || it.params || it.query || it.creates
      ? { '400': problemAnswer(writer, 'Not in the right form.') }
      : {}),
    ...(signedOnly ? { '401': problemAnswer(writer, 'Signed out.') } : {}),
    ...(byRole ? { '403': problemAnswer(writer, 'Not for this role.') } : {}),
    ...(it.params ? { '404': problemAnswer(writer, 'Nothing here for you.') } : {}),
    ...(it.guarded
      ? {
          '412': problemAnswer(writer, 'Changed since.'),
          '428': problemAnswer(writer, 'If-Match is missing.'),
        }
      : {}),
    default: problemAnswer(writer, 'Any other problem; `code` says which.'),
  };
};

/** One entry under a path: parameters, body, the good answer and the problems it can meet. */
export const describeOperation = (it: Operation, writer: SchemaWriter): JsonSchema => {
  const parameters = [
    ...(it.params ? parametersOf('path', it.params, writer) : []),
    ...(it.query ? parametersOf('query', it.query, writer) : []),
    ...(it.creates
      ? [header('Idempotency-Key', 'A fresh UUID for each thing made; the same when retried.')]
      : []),
    ...(it.guarded ? [header('If-Match', 'The version that was changed, in quotes: the ETag.')] : []),
  ];
  const good: JsonSchema =
    it.status === 204
      ? { description: 'Done.' }
      : {
          description: 'Done.',
          content: { [it.stream ?? 'application/json']: { schema: writer.write(it.reply) } },
        };
  if (it.guarded) good.headers = { ETag: { description: 'The version now.', schema: { type: 'string' } } };
  return {
    operationId: it.id,
    summary: it.summary,
    description: `For: ${it.who.join(', ')}.`,
    tags: [it.tag],
    security: it.who.includes('anyone') ? [] : [{ session: [] }],
    ...(parameters.length > 0 ? { parameters } : {}),
    ...(it.body
      ? {
          requestBody: { required: true, content: { 'application/json': { schema: writer.write(it.body) } } },
        }
      : {}),
    responses: { [it.status]: good, ...problemsOf(it, writer) },
  };
};
