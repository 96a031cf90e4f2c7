import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open, rename } from 'node:fs/promises';

/** The sha256 of a file, hex. */
export async function hashOf(path: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
  return hash.digest('hex');
}

/** Brings a file's bytes to the disk before its name appears. */
export async function settle(from: string, to: string): Promise<void> {
  const file = await open(from, 'r+');
  try {
    await file.datasync();
  } finally {
    await file.close();
  }
  await rename(from, to);
}
