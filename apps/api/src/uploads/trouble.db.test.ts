import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { type Door, openDoor } from '../testing/open-door.ts';
import { sumOf, uploadWorld } from '../testing/upload-world.ts';
import { openUploadFile, type UploadFile } from './upload-file.ts';

let database: TestDatabase;
let folder = '';
/** Two doors on one store and one database share nothing else, as two processes do. */
let doors: Door[] = [];
let here = '';
let there = '';
let world: Awaited<ReturnType<typeof uploadWorld>>;
/** What the disk of the first door does besides writing. */
let disk: Partial<UploadFile> = {};
let synced = 0;

const failing = (code: string): Error => Object.assign(new Error(`${code}: '/srv/media/x'`), { code });
const openFile = async (file: string): Promise<UploadFile> => {
  const real = await openUploadFile(file);
  return {
    writev: (...given) => (disk.writev ?? real.writev.bind(real))(...given),
    datasync: async () => {
      await (disk.datasync ?? real.datasync.bind(real))();
      synced = (await real.stat()).size;
    },
    stat: real.stat.bind(real),
    truncate: real.truncate.bind(real),
    close: real.close.bind(real),
  };
};

beforeAll(async () => {
  database = await testDatabase({ poolSize: 8 });
  folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-trouble-'));
  doors = [await openDoor(database.db, { folder, openFile }), await openDoor(database.db, { folder })];
  const [first, second] = doors;
  here = (await first?.app.listen({ host: '127.0.0.1', port: 0 })) ?? '';
  there = (await second?.app.listen({ host: '127.0.0.1', port: 0 })) ?? '';
});
beforeEach(async () => {
  disk = {};
  const [first] = doors;
  if (first) world = await uploadWorld(database, first, folder);
});
afterAll(async () => {
  for (const door of doors) await door.close();
  await database.close();
  await rm(folder, { recursive: true, force: true });
});

it('acknowledges no byte that was not synced', async () => {
  const at = await world.create(here, 500_000);
  const answer = await world.patch(here + at, 0, randomBytes(300_000));
  expect([answer.status, answer.headers.get('upload-offset'), synced]).toEqual([204, '300000', 300_000]);
});

it('says 507 and the true offset when the disk is full, and goes on when it is not', async () => {
  const file = randomBytes(400_000);
  const at = await world.create(here, file.length);
  await world.patch(here + at, 0, file.subarray(0, 1000));
  let room = 70_000;
  const real = await openUploadFile(
    path.join(folder, world.academyId, 'clips', world.clipIdOf(at), 'original'),
  );
  // A disk writes what still fits and says so at the next write only.
  disk.writev = async (buffers, position) => {
    const bytes = Buffer.concat(buffers.map((it) => Buffer.from(it.buffer, it.byteOffset, it.byteLength)));
    const fits = bytes.subarray(0, room);
    if (fits.length === 0) throw failing('ENOSPC');
    room -= fits.length;
    await real.writev([fits], position);
    return { bytesWritten: fits.length, buffers };
  };
  const full = await world.patch(here + at, 1000, file.subarray(1000));
  expect([full.status, full.headers.get('upload-offset')]).toEqual([507, '71000']);
  expect(await full.json()).toMatchObject({ code: 'no-room', detail: expect.stringContaining('kept') });
  expect(await world.offsetOf(here + at)).toBe(71_000);
  expect(await world.statusOf(at)).toBe('uploading');
  disk = {};
  expect((await world.patch(here + at, 71_000, file.subarray(71_000))).status).toBe(204);
  expect(sumOf(await world.bytesOf(at))).toBe(sumOf(file));
  await real.close();
});

it('takes back what a failed sync leaves in doubt, and says nothing of the inside', async () => {
  const at = await world.create(here, 9_000);
  await world.patch(here + at, 0, randomBytes(3_000));
  let calls = 0;
  // The first sync of a chunk is that of the look at the offset.
  disk.datasync = async () => {
    calls += 1;
    if (calls === 2) throw failing('EIO');
  };
  const failed = await world.patch(here + at, 3_000, randomBytes(5_000));
  expect([failed.status, failed.headers.get('upload-offset')]).toEqual([500, '3000']);
  expect(await failed.text()).not.toMatch(/EIO|srv|original/);
  disk = {};
  expect(await world.offsetOf(here + at)).toBe(3_000);
});

/** A body that sends its first bytes and then the rest when told. */
const held = (first: Uint8Array, rest: Uint8Array) => {
  let go: () => void = () => undefined;
  const body = new ReadableStream<Uint8Array>({
    start: (control) => {
      control.enqueue(first);
      go = () => {
        control.enqueue(rest);
        control.close();
      };
    },
  });
  return { body, go: () => go() };
};

it('has one writer across doors: a second is told where it is, and takes over from one gone silent', async () => {
  const file = randomBytes(200_000);
  const at = await world.create(here, file.length);
  const { body, go } = held(file.subarray(0, 50_000), file.subarray(50_000, 60_000));
  const first = world.patch(here + at, 0, body);
  await expect.poll(() => world.offsetOf(there + at)).toBe(50_000);
  const second = await world.patch(there + at, 50_000, file.subarray(50_000));
  expect(second.status).toBe(204);
  go();
  const gone = await first.catch(() => null);
  expect(gone === null || gone.status === 423).toBe(true);
  expect(sumOf(await world.bytesOf(at))).toBe(sumOf(file));
});

it('does not cut one that is at work: the second is sent away with 423', async () => {
  const file = randomBytes(300_000);
  const at = await world.create(there, file.length);
  let sentBytes = 0;
  const dripping = new ReadableStream<Uint8Array>({
    pull: async (control) => {
      await new Promise((later) => setTimeout(later, 50));
      control.enqueue(file.subarray(sentBytes, sentBytes + 2_500));
      sentBytes += 2_500;
      if (sentBytes >= file.length) control.close();
    },
  });
  const first = world.patch(there + at, 0, dripping);
  await expect.poll(() => world.offsetOf(here + at)).toBeGreaterThan(0);
  const second = await world.patch(here + at, await world.offsetOf(here + at), randomBytes(10));
  expect([409, 423]).toContain(second.status);
  expect((await first).status).toBe(204);
  expect(sumOf(await world.bytesOf(at))).toBe(sumOf(file));
}, 30_000);

it('drops an upload when asked: its bytes go and its place is free; not one that has arrived', async () => {
  const at = await world.create(here, 10);
  await world.patch(here + at, 0, Buffer.from('abcd'));
  expect((await world.drop(there + at)).status).toBe(204);
  expect(await world.offsetOf(here + at)).toBeNaN();
  expect(await world.statusOf(at)).toBe('expired');
  await expect(world.bytesOf(at)).rejects.toMatchObject({ code: 'ENOENT' });
  const arrived = await world.create(here, 4);
  await world.patch(here + arrived, 0, Buffer.from('abcd'));
  expect((await world.drop(here + arrived)).status).toBe(409);
});

it('counts no body in time as a whole, only heads and silence', () => {
  const server = doors[0]?.app.server;
  expect([server?.requestTimeout, server?.timeout]).toEqual([0, 30_000]);
  expect(server?.headersTimeout).toBeLessThanOrEqual(15_000);
});
