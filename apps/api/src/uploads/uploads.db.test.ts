import { createHash, randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { buffer } from 'node:stream/consumers';
import { withAcademy } from '@ballfirst/db/with-academy';
import { originalKey } from '@ballfirst/services/clips/keys';
import { createAcademy, createMembership, createStudent } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import * as tus from 'tus-js-client';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { cookieOf } from '../testing/cookie-of.ts';
import { type Door, openDoor } from '../testing/open-door.ts';

let database: TestDatabase;
let folder = '';
let door: Door;
let address = '';
let academyId = '';
let cookie = '';

const open = async (): Promise<void> => {
  door = await openDoor(database.db, { folder });
  address = await door.app.listen({ host: '127.0.0.1', port: 0 });
};
const studentCookie = async (): Promise<string> => {
  const member = await createMembership(database.db, { academyId, role: 'student', name: 'A student' });
  await createStudent(database.db, { academyId, membershipId: member.id });
  return cookieOf(door, member);
};

beforeAll(async () => {
  database = await testDatabase();
  folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-uploads-'));
  await open();
  academyId = (await createAcademy(database.db)).id;
});
beforeEach(async () => {
  cookie = await studentCookie();
});
afterAll(async () => {
  await door.close();
  await database.close();
  await rm(folder, { recursive: true, force: true });
});

const base64 = (text: string): string => Buffer.from(text).toString('base64');
const metadata = `filename ${base64('swing.mp4')},view ${base64('face-on')},swingLength ${base64('full')}`;
const tusHeaders = (of: string) => ({ cookie: of, 'tus-resumable': '1.0.0' });
const create = (length: number | string, more: Record<string, string> = {}, of = cookie) =>
  fetch(`${address}/uploads`, {
    method: 'POST',
    headers: { ...tusHeaders(of), 'upload-length': `${length}`, 'upload-metadata': metadata, ...more },
  });
const started = async (length: number): Promise<string> =>
  (await create(length)).headers.get('location') ?? '';
const patch = (
  at: string,
  offset: number,
  body: Uint8Array,
  of = cookie,
  more: Record<string, string> = {},
) =>
  fetch(`${address}${at}`, {
    method: 'PATCH',
    headers: {
      ...tusHeaders(of),
      'upload-offset': `${offset}`,
      'content-type': 'application/offset+octet-stream',
      ...more,
    },
    body: Buffer.from(body),
  });
const offsetOf = async (at: string): Promise<number> => {
  const answer = await fetch(`${address}${at}`, { method: 'HEAD', headers: tusHeaders(cookie) });
  expect(answer.status).toBe(200);
  return Number(answer.headers.get('upload-offset'));
};
const clipIdOf = (at: string): string => at.split('/').at(-1) ?? '';
const statusOf = async (at: string): Promise<string | undefined> =>
  (await withAcademy(database.db, academyId, (tx) => tx.clip.findFirst({ where: { id: clipIdOf(at) } })))
    ?.status;
const bytesOf = async (at: string): Promise<Buffer> =>
  buffer(await door.resources.blobs.read(originalKey({ academyId, clipId: clipIdOf(at) })));
const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Sends a PATCH that promises everything and ends the connection after `bytes`. */
const cutAfter = (at: string, offset: number, whole: Uint8Array, bytes: number): Promise<void> =>
  new Promise((done, failed) => {
    const { hostname, port } = new URL(address);
    const socket = connect(Number(port), hostname, () => {
      const head = [
        `PATCH ${at} HTTP/1.1`,
        `Host: ${hostname}:${port}`,
        `Cookie: ${cookie}`,
        'Tus-Resumable: 1.0.0',
        `Upload-Offset: ${offset}`,
        'Content-Type: application/offset+octet-stream',
        `Content-Length: ${whole.length - offset}`,
      ];
      socket.write(`${head.join('\r\n')}\r\n\r\n`);
      socket.write(whole.subarray(offset, offset + bytes), () => socket.end());
    });
    socket.on('close', () => done()).on('error', failed);
    socket.resume();
  });

it('takes a file of a real client, with what it says of itself', async () => {
  const file = randomBytes(700_001);
  const url = await new Promise<string>((done, failed) => {
    const upload = new tus.Upload(file, {
      endpoint: `${address}/uploads`,
      chunkSize: 256 * 1024,
      headers: { cookie },
      metadata: {
        filename: 'höhe & weg.mov',
        view: 'down-the-line',
        swingLength: 'hip-high',
        filetype: 'video/quicktime',
      },
      onError: failed,
      onSuccess: () => done(upload.url ?? ''),
    });
    upload.start();
  });
  const at = new URL(url).pathname;
  expect(at).toMatch(/^\/uploads\/[0-9a-f-]{36}$/);
  expect(sumOf(await bytesOf(at))).toBe(sumOf(file));
  expect(await statusOf(at)).toBe('uploaded');
  const clip = await door.app.inject({ url: `/api/clips/${clipIdOf(at)}`, headers: { cookie } });
  expect(clip.json()).toMatchObject({
    fileName: 'höhe & weg.mov',
    view: 'down-the-line',
    swingLength: 'hip-high',
  });
});

it('goes on after cuts at any byte and after a new start, with the sum unchanged', async () => {
  const file = randomBytes(900_000);
  const at = await started(file.length);
  let offset = 0;
  for (const bytes of [1, 65_537, 300_003]) {
    await cutAfter(at, offset, file, bytes);
    const now = await offsetOf(at);
    expect(now).toBeGreaterThanOrEqual(offset);
    expect(now).toBeLessThanOrEqual(offset + bytes);
    offset = now;
  }
  expect(offset).toBeGreaterThan(0);
  expect(sumOf(await bytesOf(at))).toBe(sumOf(file.subarray(0, offset)));
  await door.close();
  await open();
  expect(await offsetOf(at)).toBe(offset);
  expect(await statusOf(at)).toBe('uploading');
  const url = await new Promise<string>((done, failed) => {
    const upload = new tus.Upload(file, {
      uploadUrl: `${address}${at}`,
      headers: { cookie },
      onError: failed,
      onSuccess: () => done(upload.url ?? ''),
    });
    upload.start();
  });
  expect(new URL(url).pathname).toBe(at);
  expect(sumOf(await bytesOf(at))).toBe(sumOf(file));
  expect(await statusOf(at)).toBe('uploaded');
});

it('answers a stale offset of a second tab with 409 and changes nothing', async () => {
  const at = await started(10);
  expect((await patch(at, 0, Buffer.from('abcd'))).status).toBe(204);
  for (const offset of [0, 3, 5]) expect((await patch(at, offset, Buffer.from('XX'))).status).toBe(409);
  expect(await offsetOf(at)).toBe(4);
  expect((await bytesOf(at)).toString()).toBe('abcd');
});

it('notes a whole file whose last answer was lost', async () => {
  const at = await started(4);
  await door.resources.blobs.put(originalKey({ academyId, clipId: clipIdOf(at) }), Buffer.from('abcd'));
  expect(await offsetOf(at)).toBe(4);
  expect(await statusOf(at)).toBe('uploaded');
});

it('takes no byte more than was announced', async () => {
  const at = await started(4);
  expect((await patch(at, 0, Buffer.from('abcdefgh'))).status).toBe(413);
  expect(await offsetOf(at)).toBeLessThanOrEqual(4);
});

it('refuses what is too large, empty, unnamed or of another kind, in words', async () => {
  const large = await create(500 * 1024 * 1024 + 1);
  expect(large.status).toBe(413);
  expect(await large.json()).toMatchObject({ code: 'too-large' });
  for (const length of ['0', '-1', 'x', '1e3']) expect((await create(length)).status).toBe(400);
  const unnamed = await create(5, { 'upload-metadata': `view ${base64('sideways')}` });
  expect(await unnamed.json()).toMatchObject({ code: 'bad-request', status: 400 });
  const at = await started(4);
  expect((await patch(at, 0, Buffer.from('abcd'), cookie, { 'content-type': 'video/mp4' })).status).toBe(415);
  const list = `${metadata},filetype ${base64('text/plain')}`;
  const listed = await create(5, { 'upload-metadata': list });
  expect([listed.status, await listed.json()]).toMatchObject([415, { code: 'not-a-video' }]);
});

it('takes a photo of the grip, up to its own bound and of its own kind', async () => {
  const told = (type: string) =>
    `filename ${base64('hands.jpg')},view ${base64('grip-photo')},filetype ${base64(type)}`;
  const photo = { 'upload-metadata': told('image/jpeg') };
  const at = (await create(4, photo)).headers.get('location') ?? '';
  expect((await patch(at, 0, Buffer.from('abcd'))).status).toBe(204);
  expect(await statusOf(at)).toBe('uploaded');
  const large = await create(20 * 1024 * 1024 + 1, photo);
  expect([large.status, await large.json()]).toMatchObject([413, { code: 'too-large' }]);
  const film = await create(4, { 'upload-metadata': told('video/mp4') });
  expect([film.status, await film.json()]).toMatchObject([415, { code: 'not-a-photo' }]);
  const still = `${metadata},filetype ${base64('image/jpeg')}`;
  expect((await create(4, { 'upload-metadata': still })).status).toBe(415);
});

it('is nobody else’s: another student gets 404, a coach 403, a stranger 401', async () => {
  const at = await started(4);
  const other = await studentCookie();
  const coach = await cookieOf(door, await createMembership(database.db, { academyId }));
  for (const [of, status] of [
    [other, 404],
    [coach, 403],
    ['ballfirst=none', 401],
  ] as const) {
    expect((await patch(at, 0, Buffer.from('abcd'), of)).status).toBe(status);
    expect((await fetch(`${address}${at}`, { method: 'HEAD', headers: tusHeaders(of) })).status).toBe(status);
  }
  expect((await create(4, {}, coach)).status).toBe(403);
  expect(await offsetOf(at)).toBe(0);
});

it('says when its time is over, and that it is gone then', async () => {
  const answer = await create(4);
  const at = answer.headers.get('location') ?? '';
  const expires = new Date(answer.headers.get('upload-expires') ?? '');
  expect(expires.getTime()).toBeGreaterThan(door.now.getTime());
  const before = door.now;
  door.now = new Date(expires.getTime() + 1_000);
  const late = await fetch(`${address}${at}`, { method: 'HEAD', headers: tusHeaders(cookie) });
  expect(late.status).toBe(404);
  door.now = before;
});

it('carries the headers of every answer, and opens itself to no other site', async () => {
  const answer = await create(4);
  expect(answer.status).toBe(201);
  expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
  expect(answer.headers.get('x-request-id')).toMatch(/^[0-9a-f-]{36}$/);
  expect(answer.headers.get('access-control-allow-origin')).not.toBe('*');
  const options = await fetch(`${address}/uploads`, { method: 'OPTIONS' });
  expect(options.headers.get('tus-max-size')).toBe(`${500 * 1024 * 1024}`);
});

it('cuts a connection that drips', async () => {
  const slow = await openDoor(database.db, { folder, pace: { everyMs: 100, bytesAtLeast: 1_000 } });
  const at = await started(100_000);
  const { hostname, port } = new URL(await slow.app.listen({ host: '127.0.0.1', port: 0 }));
  await new Promise<void>((done) => {
    const socket = connect(Number(port), hostname, () => {
      const head = `PATCH ${at} HTTP/1.1\r\nHost: x\r\nCookie: ${cookie}\r\nTus-Resumable: 1.0.0\r\nUpload-Offset: 0\r\n`;
      socket.write(
        `${head}Content-Type: application/offset+octet-stream\r\nContent-Length: 100000\r\n\r\nabc`,
      );
    });
    socket.on('close', () => done()).on('error', () => undefined);
  });
  expect(await offsetOf(at)).toBeLessThanOrEqual(3);
  await slow.close();
});
