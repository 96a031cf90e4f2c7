import { randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import type { Blobs } from '@ballfirst/services/ports';
import { partsOfKey } from './blob-key.ts';
import { syncFolder } from './sync-folder.ts';

/** The path of a key under the root. @throws RangeError for a key that could leave it */
const pathUnder = (root: string, key: string): string => path.join(root, ...partsOfKey(key));

const missing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ENOENT';

/** Files on this machine's disk under one folder. `put` is durable when it returns: file and folders are synced. */
export const blobsOnDisk = (folder: string): Blobs => {
  const root = path.resolve(folder);
  const localPath = (key: string): string => pathUnder(root, key);
  return {
    localPath,
    settle: async (key) => {
      // What is worked on here is the store; its name outlasts a loss of power once the folder is synced.
      await syncFolder(path.dirname(localPath(key)));
    },
    fetch: async (key) => localPath(key),
    release: async () => undefined,
    put: async (key, bytes) => {
      const target = localPath(key);
      const parent = path.dirname(target);
      const firstMade = await mkdir(parent, { recursive: true });
      const draft = path.join(parent, `.${randomUUID()}.draft`);
      try {
        const file = await open(draft, 'wx', 0o600);
        try {
          await file.writeFile(bytes);
          await file.sync();
        } finally {
          await file.close();
        }
        await rename(draft, target);
      } catch (error) {
        await rm(draft, { force: true });
        throw error;
      }
      // A new folder is an entry of the one above it: each has to be synced up to the first that was there before.
      const top = firstMade === undefined ? parent : path.dirname(firstMade);
      for (let at = parent; ; at = path.dirname(at)) {
        await syncFolder(at);
        if (at === top || at === path.dirname(at)) break;
      }
    },
    size: async (key) => {
      try {
        const found = await stat(localPath(key));
        return found.isFile() ? found.size : null;
      } catch (error) {
        if (missing(error)) return null;
        throw error;
      }
    },
    read: async (key, range) => {
      const stream = createReadStream(localPath(key), range ?? {});
      await new Promise<void>((ready, failed) => stream.once('open', () => ready()).once('error', failed));
      return stream;
    },
    remove: async (key) => {
      const target = localPath(key);
      await rm(target, { force: true });
      await syncFolder(path.dirname(target)).catch((error: unknown) => {
        if (!missing(error)) throw error;
      });
    },
  };
};
