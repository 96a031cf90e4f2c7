import { ProblemError } from '@ballfirst/contracts/problems';
import type { Upload } from '@ballfirst/services/clips/read-upload';
import type { FastifyRequest } from 'fastify';
import { diskTrouble } from './disk-trouble.ts';
import { type Intake, intakeOf } from './intake.ts';
import { chunkLength } from './tus-headers.ts';
import { appendSynced, bytesOnDisk, type OpenUploadFile } from './upload-file.ts';
import type { UploadLocks } from './upload-locks.ts';
import { type Pace, watchPace } from './watch-pace.ts';

export type ChunkParts = {
  readonly locks: UploadLocks;
  readonly pace: Pace;
  readonly openFile: OpenUploadFile;
};

type Chunk = { readonly upload: Upload; readonly path: string; readonly offset: number };

/**
 * Takes one chunk in, as the only writer of its upload.
 * @returns the new offset; every byte before it is on disk
 * @throws ProblemError upload-elsewhere for an offset that is not where the file ends, upload-busy, too-large, no-room
 */
export const takeChunk = async (
  request: FastifyRequest,
  { upload, path, offset }: Chunk,
  { locks, pace, openFile }: ChunkParts,
): Promise<number> => {
  let intake: Intake | null = null;
  let isStopped = false;
  const writer = {
    silentForMs: () => intake?.silentForMs() ?? 0,
    stop: () => {
      isStopped = true;
      intake?.stop();
    },
  };
  const write = async (): Promise<number> => {
    const file = await openFile(path);
    try {
      if ((await bytesOnDisk(file)) !== offset) throw new ProblemError('upload-elsewhere');
      if (offset + (chunkLength(request) ?? 0) > upload.lengthBytes) throw new ProblemError('too-large');
      const taken = intakeOf(request.raw);
      intake = taken;
      if (isStopped) taken.stop();
      const stopWatching = watchPace(request.raw.socket, pace, taken.waits);
      const end = upload.lengthBytes;
      const written = await appendSynced(file, taken, { offset, end }).finally(stopWatching);
      if (written.over) throw new ProblemError('too-large');
      if (isStopped) throw new ProblemError('upload-busy');
      return written.offset;
    } finally {
      await file.close();
    }
  };
  return locks.alone(upload.clipId, writer, write).catch((error: unknown) => {
    throw diskTrouble(error);
  });
};
