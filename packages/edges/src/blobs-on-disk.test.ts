import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { buffer } from 'node:stream/consumers';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { blobsOnDisk } from './blobs-on-disk.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-blobs-'));
});
afterAll(() => rm(folder, { recursive: true }));

const bytes = (text: string) => new TextEncoder().encode(text);

it('keeps what was put, replaces it, and gives any part of it', async () => {
  const blobs = blobsOnDisk(folder);
  await blobs.put('a1/clips/c1/poster.jpg', bytes('first'));
  await blobs.put('a1/clips/c1/poster.jpg', bytes('0123456789'));
  expect(await blobs.size('a1/clips/c1/poster.jpg')).toBe(10);
  expect(await buffer(await blobs.read('a1/clips/c1/poster.jpg'))).toEqual(Buffer.from('0123456789'));
  const part = await blobs.read('a1/clips/c1/poster.jpg', { start: 2, end: 4 });
  expect(await buffer(part)).toEqual(Buffer.from('234'));
  expect(await readdir(path.join(folder, 'a1/clips/c1'))).toEqual(['poster.jpg']);
});

it('says null for what is not there, and removes twice without complaint', async () => {
  const blobs = blobsOnDisk(folder);
  await blobs.put('a1/x', bytes('x'));
  await blobs.remove('a1/x');
  await blobs.remove('a1/x');
  await blobs.remove('nowhere/x');
  expect(await blobs.size('a1/x')).toBeNull();
  await expect(blobs.read('a1/x')).rejects.toMatchObject({ code: 'ENOENT' });
});

it.each(['', '/etc/passwd', '../x', 'a/../../x', 'a//b', 'a/./b', '.hidden', 'a\\b', 'a/b\0', 'C:/x'])(
  'refuses the key %j',
  async (key) => {
    const blobs = blobsOnDisk(path.join(folder, 'inner'));
    await writeFile(path.join(folder, 'x'), 'outside');
    await expect(blobs.put(key, bytes('x'))).rejects.toThrow(RangeError);
    await expect(blobs.size(key)).rejects.toThrow(RangeError);
    expect(() => blobs.localPath(key)).toThrow(RangeError);
  },
);
