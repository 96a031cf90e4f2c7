import { randomBytes } from 'node:crypto';
import type { Clip, Membership } from '@ballfirst/db/generated/client';
import { withAcademy } from '@ballfirst/db/with-academy';
import { photoKey, posterKey, renditionKey } from '@ballfirst/services/clips/keys';
import { stillKey } from '@ballfirst/services/stills/still-key';
import { createAcademy, createClip, createMembership, createStudent } from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cookieOf } from '../testing/cookie-of.ts';
import { type Door, openDoor } from '../testing/open-door.ts';

const film = randomBytes(5_000);
let database: TestDatabase;
let door: Door;
let clip: Clip;
let owner: Membership;
let url = '';
let cookie = '';

beforeAll(async () => {
  database = await testDatabase();
  door = await openDoor(database.db);
  const { id: academyId } = await createAcademy(database.db);
  owner = await createMembership(database.db, { academyId, role: 'student', name: 'A student' });
  const student = await createStudent(database.db, { academyId, membershipId: owner.id });
  clip = await createClip(database.db, { academyId, studentId: student.id });
  await door.resources.blobs.put(renditionKey({ academyId, clipId: clip.id }), film);
  await door.resources.blobs.put(posterKey({ academyId, clipId: clip.id }), Buffer.from('jpeg'));
  url = `/media/clips/${clip.id}/rendition.mp4`;
  cookie = await cookieOf(door, owner);
});
afterAll(async () => {
  await door.close();
  await database.close();
});

const get = (headers: Record<string, string> = {}, at = url, method: 'GET' | 'HEAD' = 'GET') =>
  door.app.inject({ method, url: at, headers: { cookie, ...headers } });

it('gives the whole film, kept by this browser alone and never guessed to be something else', async () => {
  const answer = await get();
  expect(answer.statusCode).toBe(200);
  expect(answer.rawPayload).toEqual(film);
  expect(answer.headers).toMatchObject({
    'content-type': 'video/mp4',
    'content-length': '5000',
    'accept-ranges': 'bytes',
    'cache-control': 'private, max-age=300',
    vary: 'Cookie',
    'x-content-type-options': 'nosniff',
    'content-security-policy': expect.stringContaining("default-src 'none'"),
  });
  const poster = await get({}, `/media/clips/${clip.id}/poster.jpg`);
  expect([poster.headers['content-type'], poster.body]).toEqual(['image/jpeg', 'jpeg']);
});

it.each([
  ['bytes=0-99', 0, 99],
  ['bytes=4990-', 4990, 4999],
  ['bytes=-10', 4990, 4999],
  ['bytes=4000-9999', 4000, 4999],
  ['bytes=-9999', 0, 4999],
])('gives a part: %s', async (range, start, end) => {
  const answer = await get({ range });
  expect(answer.statusCode).toBe(206);
  expect(answer.headers['content-range']).toBe(`bytes ${start}-${end}/5000`);
  expect(answer.headers['content-length']).toBe(`${end - start + 1}`);
  expect(answer.rawPayload).toEqual(film.subarray(start, end + 1));
});

it.each(['bytes=5000-', 'bytes=9000-9001', 'bytes=-0'])('says that nothing is there: %s', async (range) => {
  const answer = await get({ range });
  expect([answer.statusCode, answer.headers['content-range'], answer.body]).toEqual([
    416,
    'bytes */5000',
    '',
  ]);
});

it('sends nothing again that the browser holds, and everything when its part is of another film', async () => {
  const { etag } = (await get()).headers;
  const held = await get({ 'if-none-match': `"x", W/${etag}` });
  expect([held.statusCode, held.body]).toEqual([304, '']);
  expect((await get({ range: 'bytes=0-9', 'if-range': String(etag) })).statusCode).toBe(206);
  expect((await get({ range: 'bytes=0-9', 'if-range': '"older"' })).statusCode).toBe(200);
});

it('answers HEAD with the length and no byte', async () => {
  const answer = await get({}, url, 'HEAD');
  expect([answer.statusCode, answer.headers['content-length'], answer.body]).toEqual([200, '5000', '']);
});

it('asks for every request who it is', async () => {
  const { academyId } = owner;
  const stranger = await createMembership(database.db, { role: 'coach' });
  const fellow = await createMembership(database.db, { academyId, role: 'student' });
  await createStudent(database.db, { academyId, membershipId: fellow.id });
  const coach = await createMembership(database.db, { academyId });
  const statusFor = async (of: string) => (await get({ cookie: of })).statusCode;
  expect(await statusFor('')).toBe(401);
  expect(await statusFor(await cookieOf(door, stranger))).toBe(404);
  expect(await statusFor(await cookieOf(door, fellow))).toBe(404);
  expect(await statusFor(await cookieOf(door, coach))).toBe(200);
});

it.each(['original', '../../x', '%2e%2e%2foriginal', 'frames.json', 'rendition.mp4.draft'])(
  'has nothing else: %s',
  async (file) => {
    expect((await get({}, `/media/clips/${clip.id}/${file}`)).statusCode).toBe(404);
  },
);

it('gives a photo of the grip to its student and the staff of the academy, and to nobody else', async () => {
  const { academyId, studentId } = clip;
  const photo = await createClip(database.db, {
    academyId,
    studentId,
    view: 'grip-photo',
    swingLength: 'none',
  });
  await door.resources.blobs.put(photoKey({ academyId, clipId: photo.id }), Buffer.from('hands'));
  const at = `/media/clips/${photo.id}/photo.jpg`;
  const answer = await get({}, at);
  expect([answer.statusCode, answer.headers['content-type'], answer.body]).toEqual([
    ...[200, 'image/jpeg', 'hands'],
  ]);
  const fellow = await createMembership(database.db, { academyId, role: 'student' });
  await createStudent(database.db, { academyId, membershipId: fellow.id });
  const coach = await createMembership(database.db, { academyId });
  const stranger = await createMembership(database.db, { role: 'coach' });
  const statusFor = async (of: string) => (await get({ cookie: of }, at)).statusCode;
  expect(await statusFor('')).toBe(401);
  expect(await statusFor(await cookieOf(door, coach))).toBe(200);
  expect(await statusFor(await cookieOf(door, stranger))).toBe(404);
  expect(await statusFor(await cookieOf(door, fellow))).toBe(404);
  expect((await get({}, at.replace('photo.jpg', 'original'))).statusCode).toBe(404);
});

describe('the picture of a reply’s frame', () => {
  const drawn = async () => {
    const { academyId, studentId } = clip;
    const programme = await createProgramme(database.db, { academyId, studentId });
    const { submissionId } = programme;
    await withAcademy(database.db, academyId, (tx) =>
      tx.clip.updateMany({ where: { id: clip.id }, data: { submissionId } }),
    );
    const frames = [{ clipId: clip.id, frame: 3, position: 'top', caption: 'Here' }];
    return createReply(database.db, programme, { frames, stillsVersion: 1 });
  };
  let path = '';
  beforeAll(async () => {
    const { id: replyId, academyId } = await drawn();
    await door.resources.blobs.put(stillKey({ academyId, replyId }, 0), Buffer.from('a still'));
    path = `/media/replies/${replyId}/0.jpg`;
  });

  it('is given to those who may read the reply, and to nobody else', async () => {
    const answer = await get({}, path);
    expect([answer.statusCode, answer.body]).toEqual([200, 'a still']);
    expect(answer.headers).toMatchObject({
      'content-type': 'image/jpeg',
      'cache-control': 'private, max-age=300',
      'x-content-type-options': 'nosniff',
    });
    const coach = await createMembership(database.db, { academyId: owner.academyId });
    const stranger = await createMembership(database.db, { role: 'coach' });
    const fellow = await createMembership(database.db, { academyId: owner.academyId, role: 'student' });
    await createStudent(database.db, { academyId: owner.academyId, membershipId: fellow.id });
    const statusFor = async (of: string) => (await get({ cookie: of }, path)).statusCode;
    expect(await statusFor('')).toBe(401);
    expect(await statusFor(await cookieOf(door, coach))).toBe(200);
    expect(await statusFor(await cookieOf(door, stranger))).toBe(404);
    expect(await statusFor(await cookieOf(door, fellow))).toBe(404);
  });

  it.each(['1.jpg', '6.jpg', '-1.jpg', '0.png', '0.jpg.part', '..%2f..%2fx.jpg'])(
    'has nothing else: %s',
    async (file) => {
      expect((await get({}, path.replace('0.jpg', file))).statusCode).toBe(404);
    },
  );

  it('closes with its video when consent is withdrawn, for staff too, with words', async () => {
    const coach = await createMembership(database.db, { academyId: owner.academyId });
    await withAcademy(database.db, owner.academyId, (tx) =>
      tx.clip.updateMany({ where: { id: clip.id }, data: { status: 'erased', eraseAt: new Date() } }),
    );
    for (const of of [cookie, await cookieOf(door, coach)]) {
      for (const at of [path, url, url.replace('rendition.mp4', 'strip.jpg')]) {
        const answer = await get({ cookie: of }, at);
        expect([answer.statusCode, answer.json().code]).toEqual([403, 'consent-missing']);
        expect(answer.json().detail).toContain('withdrawn');
      }
    }
  });
});
