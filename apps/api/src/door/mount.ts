import { type OperationId, operations } from '@ballfirst/contracts/http/operations';
import type { Operation } from '@ballfirst/contracts/operation';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Resources } from '@ballfirst/services/context';
import { contextOf } from '@ballfirst/services/context-of';
import type { Call, Input, Reply } from '@ballfirst/services/operation-types';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { entityTag, versionOf } from './entity-tag.ts';
import { onceOf } from './idempotency-key.ts';
import { mayUse } from './may-use.ts';
import { routeOf } from './route-of.ts';

export type Mounting = { readonly app: FastifyInstance; readonly resources: Resources };

/** Path, query, body and version in one object: what the schemas of the operation let through. */
export const inputOf = <K extends OperationId>(id: K, request: FastifyRequest): Input<K> => {
  const it: Operation = operations[id];
  return Object.assign(
    {},
    it.query ? request.query : null,
    it.body ? request.body : null,
    it.params ? request.params : null,
    it.guarded ? { version: versionOf(request.headers['if-match']) } : null,
  ) as Input<K>;
};

/** Sends what a verb answered, with the status of its operation. */
export const sendReply = (id: OperationId, reply: FastifyReply, body: unknown): FastifyReply => {
  const { status }: Operation = operations[id];
  return status === 204 ? reply.code(204).send() : reply.code(status).send(body);
};

/**
 * Mounts the verb of an operation. In this order: who asks (401, 403), whether the request is well-formed (404 for an
 * id that is none, 400), its key or version (400, 428), then the verb. `version` names what the ETag stands for.
 */
export const mount = <K extends OperationId>(
  { app, resources }: Mounting,
  id: K,
  verb: (call: Call<K>) => Promise<Reply<K>>,
  version?: (reply: Reply<K>) => number,
): void => {
  const it: Operation = operations[id];
  app.route({
    ...routeOf(it),
    onRequest: async (request, reply) => {
      const { actor } = await request.signedIn(reply);
      if (actor.role === null) throw new ProblemError('choose-academy');
      if (!mayUse(it.who, actor.role)) throw new ProblemError('not-allowed');
    },
    handler: async (request, reply) => {
      const { actor } = await request.signedIn(reply);
      const once = it.creates ? { once: onceOf(request, actor.membershipId ?? actor.personId) } : {};
      const ctx = contextOf({ resources, actor, requestId: request.id, ...once });
      const answer = await verb({ ctx, input: inputOf(id, request) });
      if (version !== undefined) reply.header('etag', entityTag(version(answer)));
      return sendReply(id, reply, answer);
    },
  });
};
