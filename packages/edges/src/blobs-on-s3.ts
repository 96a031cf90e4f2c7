import { createHash } from 'node:crypto';
import type { Blobs } from '@ballfirst/services/ports';
import { partsOfKey } from './blob-key.ts';
import type { S3Address } from './s3-address.ts';
import { refusedByS3, type S3Request, sendToS3 } from './s3-request.ts';

const sha256Of = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Files in an S3-compatible bucket. A `put` is durable when the store has answered; it says no to a broken body. */
export const blobsOnS3 = (at: S3Address): Omit<Blobs, 'localPath'> => {
  const send = (it: S3Request) => sendToS3(at, { ...it, key: partsOfKey(it.key).join('/') });
  return {
    put: async (key, bytes) => {
      const body = { bytes: () => bytes, length: bytes.byteLength, sha256: sha256Of(bytes) };
      const answer = await send({ method: 'PUT', key, body });
      if (answer.statusCode !== 200) throw await refusedByS3(answer, 'keep a file');
      answer.resume();
    },
    size: async (key) => {
      const answer = await send({ method: 'HEAD', key });
      answer.resume();
      if (answer.statusCode === 404) return null;
      if (answer.statusCode !== 200) throw await refusedByS3(answer, 'say the size of a file');
      return Number(answer.headers['content-length']);
    },
    read: async (key, range) => {
      const headers = range === undefined ? {} : { range: `bytes=${range.start}-${range.end}` };
      const answer = await send({ method: 'GET', key, headers });
      const wanted = range === undefined ? 200 : 206;
      if (answer.statusCode !== wanted) throw await refusedByS3(answer, 'give a file');
      return answer;
    },
    remove: async (key) => {
      const answer = await send({ method: 'DELETE', key });
      if (answer.statusCode !== 204 && answer.statusCode !== 404)
        throw await refusedByS3(answer, 'remove a file');
      answer.resume();
    },
  };
};
