import { ProblemError } from '@ballfirst/contracts/problems';
import type { FastifyReply, FastifyRequest } from 'fastify';

/** tus 1.0.0 (https://tus.io/protocols/resumable-upload): creation, creation-with-upload, expiration, termination. */
export const tusVersion = '1.0.0';
export const tusExtensions = 'creation,creation-with-upload,expiration,termination';
export const chunkType = 'application/offset+octet-stream';

/** Every answer names the version; a request of another version is not understood. */
export const speakTus = async (
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<FastifyReply | undefined> => {
  reply.headers({ 'tus-resumable': tusVersion, 'cache-control': 'no-store' });
  if (request.method === 'OPTIONS' || request.headers['tus-resumable'] === tusVersion) return undefined;
  return reply.code(412).header('tus-version', tusVersion).send();
};

export const carriesChunk = (request: FastifyRequest): boolean =>
  request.headers['content-type']?.split(';')[0]?.trim().toLowerCase() === chunkType;

/** Where a chunk begins. @throws ProblemError bad-request */
export const offsetIn = (request: FastifyRequest): number => {
  const said = request.headers['upload-offset'];
  if (typeof said !== 'string' || !/^\d{1,15}$/.test(said)) {
    throw new ProblemError('bad-request', 'Say where the chunk begins (Upload-Offset).');
  }
  return Number(said);
};

/** How long a chunk says it is; null when it is sent without a length. */
export const chunkLength = (request: FastifyRequest): number | null => {
  const said = request.headers['content-length'];
  return said === undefined ? null : Number(said);
};
