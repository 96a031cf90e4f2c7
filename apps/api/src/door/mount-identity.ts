import { type OperationId, operations } from '@ballfirst/contracts/http/operations';
import type { Operation } from '@ballfirst/contracts/operation';
import type { IdentityCall, SignedIn, SignedInCall } from '@ballfirst/services/identity/call';
import type { Reply } from '@ballfirst/services/operation-types';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { onceOf } from './idempotency-key.ts';
import { inputOf, type Mounting, sendReply } from './mount.ts';
import { routeOf } from './route-of.ts';

const callOf = <K extends OperationId>(
  { resources }: Mounting,
  id: K,
  request: FastifyRequest,
): IdentityCall<K> => {
  const it: Operation = operations[id];
  return {
    resources,
    input: inputOf(id, request),
    address: request.ip,
    device: request.headers['user-agent']?.slice(0, 200) ?? '',
    requestId: request.id,
    ...(it.creates ? { once: onceOf(request, `address:${request.ip}`) } : {}),
  };
};

/** Mounts what anybody may ask. */
export const mountOpen = <K extends OperationId>(
  mounting: Mounting,
  id: K,
  verb: (call: IdentityCall<K>) => Promise<Reply<K>>,
): void => {
  mounting.app.route({
    ...routeOf(operations[id]),
    handler: async (request, reply) => sendReply(id, reply, await verb(callOf(mounting, id, request))),
  });
};

/** Mounts what opens a session: its token goes into the cookie and nowhere else. */
export const mountOpening = <K extends OperationId>(
  mounting: Mounting,
  id: K,
  verb: (call: IdentityCall<K>) => Promise<SignedIn<Reply<K>>>,
): void => {
  mounting.app.route({
    ...routeOf(operations[id]),
    handler: async (request, reply) => {
      const signedIn = await verb(callOf(mounting, id, request));
      reply.setSession(signedIn.opened);
      return sendReply(id, reply, signedIn.reply);
    },
  });
};

/** Mounts what a person may ask about the own session, in whatever academy or none. */
export const mountSignedIn = <K extends OperationId>(
  mounting: Mounting,
  id: K,
  verb: (call: SignedInCall<K>) => Promise<Reply<K>>,
  after?: (reply: FastifyReply) => void,
): void => {
  mounting.app.route({
    ...routeOf(operations[id]),
    onRequest: async (request, reply) => {
      await request.signedIn(reply);
    },
    handler: async (request, reply) => {
      const session = await request.signedIn(reply);
      const answer = await verb({ ...callOf(mounting, id, request), session });
      after?.(reply);
      return sendReply(id, reply, answer);
    },
  });
};
