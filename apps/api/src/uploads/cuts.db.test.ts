import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import * as tus from 'tus-js-client';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { cuttingWire } from '../testing/cutting-wire.ts';
import { type Door, openDoor } from '../testing/open-door.ts';
import { sumOf, swingFacts, uploadWorld } from '../testing/upload-world.ts';

let database: TestDatabase;
let folder = '';
let door: Door;
let address = '';

beforeAll(async () => {
  database = await testDatabase();
  folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-cuts-'));
  door = await openDoor(database.db, { folder });
  address = await door.app.listen({ host: '127.0.0.1', port: 0 });
});
afterAll(async () => {
  await door.close();
  await database.close();
  await rm(folder, { recursive: true, force: true });
});

/** The same numbers 0..1 at every run (mulberry32). */
const seeded = (seed: number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

const sent = (file: Buffer, more: Partial<tus.UploadOptions>): Promise<string> =>
  new Promise((done, failed) => {
    const upload: tus.Upload = new tus.Upload(file, {
      retryDelays: [0, 10, 20, 50, 100, 200, 400],
      metadata: swingFacts,
      onError: failed,
      onSuccess: () => done(new URL(upload.url ?? '').pathname),
      ...more,
    });
    upload.start();
  });

it('arrives whole from a real client that is cut at a random byte fifty times', {
  timeout: 60_000,
}, async () => {
  const world = await uploadWorld(database, door, folder);
  const file = randomBytes(6_000_000);
  const chunkSize = 256 * 1024;
  const random = seeded(20_261_125);
  const wire = await cuttingWire(address, () =>
    wire.cuts < 50 ? Math.max(1, Math.floor(random() * chunkSize * 1.2)) : null,
  );
  const acknowledged: number[] = [];
  const at = await sent(file, {
    endpoint: `${wire.address}/uploads`,
    chunkSize,
    headers: { cookie: world.cookie },
    onChunkComplete: (_size, upTo) => acknowledged.push(upTo),
  });
  await wire.close();
  expect(wire.cuts).toBe(50);
  expect(sumOf(await world.bytesOf(at))).toBe(sumOf(file));
  expect(await world.statusOf(at)).toBe('uploaded');
  // Where each chunk begins tells what is sent again after the cut before it: never more than the chunk that was cut.
  let reached = 0;
  const again = wire.chunks.map(({ offset, bytes }) => {
    const repeated = reached - offset;
    reached = Math.max(reached, offset + bytes);
    return repeated;
  });
  expect(Math.min(...again)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...again)).toBeLessThanOrEqual(chunkSize);
  expect(acknowledged).toEqual(acknowledged.toSorted((a, b) => a - b));
});

it('arrives whole from two tabs at once: neither cuts the other', async () => {
  const world = await uploadWorld(database, door, folder);
  const file = randomBytes(3_000_000);
  const at = await world.create(address, file.length);
  const tab = (chunkSize: number) =>
    sent(file, { uploadUrl: address + at, chunkSize, headers: { cookie: world.cookie } });
  expect(await Promise.all([tab(200_000), tab(333_333)])).toEqual([at, at]);
  expect(sumOf(await world.bytesOf(at))).toBe(sumOf(file));
  expect(await world.statusOf(at)).toBe('uploaded');
});
