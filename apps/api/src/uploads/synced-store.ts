import { constants } from 'node:fs';
import { type FileHandle, mkdir, open } from 'node:fs/promises';
import path from 'node:path';
import type { Readable } from 'node:stream';
import { syncFolder } from '@ballfirst/edges/sync-folder';
import type { Upload as Known } from '@ballfirst/services/clips/read-upload';
import { DataStore, ERRORS, Upload } from '@tus/utils';

/**
 * Keeps one upload: its bytes so far are the size of its file, nothing else is written down. What this store answers
 * is on disk: every offset it names was synced before. It is made for one request and knows one upload only.
 */
export class SyncedStore extends DataStore {
  readonly #known: Known;
  readonly #file: string;

  constructor(known: Known, file: string) {
    super();
    this.extensions = ['creation', 'expiration'];
    this.#known = known;
    this.#file = file;
  }

  override async create(upload: Upload): Promise<Upload> {
    const handle = await this.#open();
    await handle.close();
    return upload;
  }

  override async getUpload(id: string): Promise<Upload> {
    const { clipId, lengthBytes, status } = this.#known;
    if (id !== clipId) throw ERRORS.FILE_NOT_FOUND;
    const offset = status === 'uploading' ? await this.#bytesOnDisk() : lengthBytes;
    return new Upload({ id, size: lengthBytes, offset });
  }

  /** Writes from `offset` on. However the stream ends, what has arrived is synced; @returns the new offset */
  override async write(stream: Readable, _id: string, offset: number): Promise<number> {
    const handle = await this.#open();
    try {
      let at = offset;
      try {
        for await (const chunk of stream) at += await writeWhole(handle, chunk, at);
      } finally {
        await syncOrTakeBack(handle, offset);
      }
      return at;
    } finally {
      await handle.close();
    }
  }

  async #bytesOnDisk(): Promise<number> {
    const handle = await this.#open();
    try {
      await handle.datasync();
      return (await handle.stat()).size;
    } finally {
      await handle.close();
    }
  }

  async #open(): Promise<FileHandle> {
    const flags = constants.O_RDWR | constants.O_CREAT;
    try {
      return await open(this.#file, constants.O_RDWR);
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
    }
    const folder = path.dirname(this.#file);
    const firstMade = await mkdir(folder, { recursive: true });
    const handle = await open(this.#file, flags, 0o600);
    const top = firstMade === undefined ? folder : path.dirname(firstMade);
    for (let at = folder; ; at = path.dirname(at)) {
      await syncFolder(at);
      if (at === top || at === path.dirname(at)) return handle;
    }
  }
}

const writeWhole = async (handle: FileHandle, chunk: Uint8Array, position: number): Promise<number> => {
  let done = 0;
  while (done < chunk.length) {
    const { bytesWritten } = await handle.write(chunk, done, chunk.length - done, position + done);
    done += bytesWritten;
  }
  return done;
};

/** After a failed sync the system may count lost bytes as written: they are taken back, so that none is acknowledged. */
const syncOrTakeBack = async (handle: FileHandle, offset: number): Promise<void> => {
  try {
    await handle.datasync();
  } catch (error) {
    await handle.truncate(offset).catch(() => undefined);
    throw error;
  }
};
