import { createHash } from 'node:crypto';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Context } from '@ballfirst/services/context';
import type { FastifyRequest } from 'fastify';

const form = /^[\x21-\x7e]{8,100}$/;

/**
 * The key of a request that creates, with a hash of what it asks for: the same key with another hash is refused.
 * @throws ProblemError bad-request when the key is missing or not 8 to 100 visible characters
 */
export const onceOf = (request: FastifyRequest, owner: string): NonNullable<Context['once']> => {
  const key = request.headers['idempotency-key'];
  if (typeof key !== 'string' || !form.test(key)) {
    throw new ProblemError(
      'bad-request',
      'Send an Idempotency-Key: 8 to 100 characters, fresh for each new thing.',
      [{ path: 'idempotency-key', message: 'is missing or not in the right form' }],
    );
  }
  // A password never reaches the database but by argon2id, so not by this hash either; the verb checks it anyway.
  const asked = JSON.stringify([request.method, request.url, request.body ?? null], (name, value) =>
    name === 'password' ? '' : value,
  );
  return { owner, key, requestHash: createHash('sha256').update(asked).digest('hex') };
};
