import { createHash, randomUUID } from 'node:crypto';
import { createReadStream, createWriteStream } from 'node:fs';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { Blobs } from '@ballfirst/services/ports';
import { partsOfKey } from './blob-key.ts';
import type { S3Address } from './s3-address.ts';
import { refusedByS3, type S3Request, sendToS3 } from './s3-request.ts';

const sha256Of = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

const sha256OfFile = async (file: string): Promise<string> => {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(file)) hash.update(chunk);
  return hash.digest('hex');
};

/**
 * Files in an S3-compatible bucket. A `put` is durable when the store has answered; it says no to a broken body. Uploads
 * in progress and files under preparation lie in `workFolder` on this machine until they are settled.
 */
export const blobsOnS3 = (at: S3Address, workFolder: string): Blobs => {
  const send = (it: S3Request) => sendToS3(at, { ...it, key: partsOfKey(it.key).join('/') });
  const localPath = (key: string): string => path.join(path.resolve(workFolder), ...partsOfKey(key));

  const keep = async (key: string, body: NonNullable<S3Request['body']>): Promise<void> => {
    const answer = await send({ method: 'PUT', key, body });
    if (answer.statusCode !== 200) throw await refusedByS3(answer, 'keep a file');
    answer.resume();
  };
  const read: Blobs['read'] = async (key, range) => {
    const headers = range === undefined ? {} : { range: `bytes=${range.start}-${range.end}` };
    const answer = await send({ method: 'GET', key, headers });
    const wanted = range === undefined ? 200 : 206;
    if (answer.statusCode !== wanted) throw await refusedByS3(answer, 'give a file');
    return answer;
  };
  const release = (key: string): Promise<void> => rm(localPath(key), { force: true });

  return {
    localPath,
    read,
    release,
    put: (key, bytes) => keep(key, { bytes: () => bytes, length: bytes.byteLength, sha256: sha256Of(bytes) }),
    settle: async (key) => {
      const file = localPath(key);
      const { size } = await stat(file);
      await keep(key, {
        bytes: () => createReadStream(file),
        length: size,
        sha256: await sha256OfFile(file),
      });
    },
    fetch: async (key) => {
      const file = localPath(key);
      await mkdir(path.dirname(file), { recursive: true });
      const draft = `${file}.${randomUUID()}.draft`;
      try {
        await pipeline(await read(key), createWriteStream(draft, { flags: 'wx', mode: 0o600 }));
        await rename(draft, file);
      } finally {
        await rm(draft, { force: true });
      }
      return file;
    },
    size: async (key) => {
      const answer = await send({ method: 'HEAD', key });
      answer.resume();
      if (answer.statusCode === 404) return null;
      if (answer.statusCode !== 200) throw await refusedByS3(answer, 'say the size of a file');
      return Number(answer.headers['content-length']);
    },
    remove: async (key) => {
      const answer = await send({ method: 'DELETE', key });
      if (answer.statusCode !== 204 && answer.statusCode !== 404) {
        throw await refusedByS3(answer, 'remove a file');
      }
      answer.resume();
      await release(key);
    },
  };
};
