import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { freePort } from '@ballfirst/testing/free-port';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import * as tus from 'tus-js-client';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Door, openDoor } from '../testing/open-door.ts';
import { sumOf, swingFacts, uploadWorld } from '../testing/upload-world.ts';

const main = fileURLToPath(new URL('../main.ts', import.meta.url));
let database: TestDatabase;
let folder = '';
/** Opens sessions only; the uploads go through processes of their own. */
let door: Door;
const children: ChildProcess[] = [];

beforeAll(async () => {
  database = await testDatabase();
  folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-killed-'));
  door = await openDoor(database.db, { folder });
});
afterAll(async () => {
  for (const child of children) child.kill('SIGKILL');
  await door.close();
  await database.close();
  await rm(folder, { recursive: true, force: true });
});

const startDoor = async (port: number): Promise<ChildProcess> => {
  const child = spawn(process.execPath, ['--import', 'tsx', main], {
    env: {
      PATH: process.env.PATH,
      PORT: `${port}`,
      DATABASE_URL: database.appUrl,
      MEDIA_FOLDER: folder,
      MAIL_FOLDER: folder,
      PUBLIC_URL: 'http://127.0.0.1:4100',
      SITE_URL: 'http://127.0.0.1:9',
    },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  children.push(child);
  for await (const line of createInterface({ input: child.stderr })) if (line.includes('"address"')) break;
  child.stderr.resume();
  return child;
};

it('loses no acknowledged byte to kill -9, and goes on when the file is chosen again', {
  timeout: 60_000,
}, async () => {
  const world = await uploadWorld(database, door, folder);
  const file = randomBytes(8_000_000);
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const first = await startDoor(port);
  let acknowledged = 0;
  const at = await new Promise<string>((cut) => {
    const upload: tus.Upload = new tus.Upload(file, {
      endpoint: `${address}/uploads`,
      chunkSize: 256 * 1024,
      retryDelays: null,
      headers: { cookie: world.cookie },
      metadata: swingFacts,
      onProgress: (sent) => {
        // In mid-chunk: some chunks are acknowledged, the bytes of another are on their way.
        if (acknowledged > 2_000_000 && sent > acknowledged) first.kill('SIGKILL');
      },
      onChunkComplete: (_size, upTo) => {
        acknowledged = upTo;
      },
      onError: () => cut(new URL(upload.url ?? '').pathname),
      onSuccess: () => cut('it was not killed'),
    });
    upload.start();
  });
  if (first.exitCode === null && first.signalCode === null) await once(first, 'exit');

  await startDoor(port);
  const offset = await world.offsetOf(address + at);
  expect(offset).toBeGreaterThanOrEqual(acknowledged);
  expect(offset).toBeLessThan(file.length);
  expect(sumOf((await world.bytesOf(at)).subarray(0, offset))).toBe(sumOf(file.subarray(0, offset)));
  const started: number[] = [];
  await new Promise<void>((done, failed) => {
    const again = new tus.Upload(file, {
      uploadUrl: address + at,
      chunkSize: 2_000_000,
      headers: { cookie: world.cookie },
      onProgress: (sent) => started.push(sent),
      onError: failed,
      onSuccess: () => done(),
    });
    again.start();
  });
  expect(started[0]).toBe(offset);
  expect(sumOf(await world.bytesOf(at))).toBe(sumOf(file));
  expect(await world.statusOf(at)).toBe('uploaded');
});
