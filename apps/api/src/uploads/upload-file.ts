import { constants } from 'node:fs';
import { type FileHandle, mkdir, open } from 'node:fs/promises';
import path from 'node:path';
import { syncFolder } from '@ballfirst/edges/sync-folder';
import type { Intake } from './intake.ts';

/** What of a file on disk an upload needs: a test puts one in its place that fails. */
export type UploadFile = Pick<FileHandle, 'writev' | 'datasync' | 'stat' | 'truncate' | 'close'>;
export type OpenUploadFile = (file: string) => Promise<UploadFile>;

/** Opens an upload's file; a new one is there also after a loss of power: each new folder's name is synced too. */
export const openUploadFile: OpenUploadFile = async (file) => {
  try {
    return await open(file, constants.O_RDWR);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
  }
  const folder = path.dirname(file);
  const firstMade = await mkdir(folder, { recursive: true });
  const handle = await open(file, constants.O_RDWR | constants.O_CREAT, 0o600);
  const top = firstMade === undefined ? folder : path.dirname(firstMade);
  for (let at = folder; ; at = path.dirname(at)) {
    await syncFolder(at);
    if (at === top || at === path.dirname(at)) return handle;
  }
};

/** How many bytes are on disk for good. Looked at first and synced then, since a writer may be at work meanwhile. */
export const bytesOnDisk = async (handle: UploadFile): Promise<number> => {
  const { size } = await handle.stat();
  await handle.datasync();
  return size;
};

/**
 * Writes what comes in from `offset` on, at most up to `end`; what has come is synced however the sender ends.
 * @returns the new offset, every byte before it on disk; `over`: more came than may
 * @throws Error of the file system; the file then ends where the last sync was good
 */
export const appendSynced = async (
  handle: UploadFile,
  intake: Intake,
  { offset, end }: { offset: number; end: number },
): Promise<{ offset: number; over: boolean }> => {
  let at = offset;
  let over = false;
  try {
    for (let taken = await intake.take(); taken !== null && !over; taken = await intake.take()) {
      over = at + taken.reduce((sum, { length }) => sum + length, 0) > end;
      if (!over) at += await writeAll(handle, taken, at);
    }
  } finally {
    intake.stop();
    await syncOrTakeBack(handle, offset);
  }
  return { offset: at, over };
};

const writeAll = async (handle: UploadFile, chunks: readonly Buffer[], position: number): Promise<number> => {
  let done = 0;
  let rest = [...chunks];
  while (rest.length > 0) {
    let { bytesWritten } = await handle.writev(rest, position + done);
    done += bytesWritten;
    const left: Buffer[] = [];
    for (const chunk of rest) {
      const skipped = Math.min(chunk.length, bytesWritten);
      bytesWritten -= skipped;
      if (skipped < chunk.length) left.push(chunk.subarray(skipped));
    }
    rest = left;
  }
  return done;
};

/** After a failed sync the system may count lost bytes as written: they are taken back, so that none is acknowledged. */
const syncOrTakeBack = async (handle: UploadFile, offset: number): Promise<void> => {
  try {
    await handle.datasync();
  } catch (error) {
    await handle.truncate(offset);
    throw error;
  }
};
