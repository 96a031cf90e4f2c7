import { newId } from '@ballfirst/db/ids';
import { announce } from '@ballfirst/db/live/announce';
import { createAcademy, createMembership, createStudent } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { cookieOf } from '../testing/cookie-of.ts';
import { type Door, openDoor } from '../testing/open-door.ts';

let database: TestDatabase;
let door: Door;
let address = '';
beforeEach(async () => {
  database = await testDatabase();
  door = await openDoor(database.db, { databaseUrl: database.appUrl, beatMs: 100 });
  address = await door.app.listen({ host: '127.0.0.1', port: 0 });
});
afterEach(async () => {
  await door.close();
  await database.close();
});

/** A page that follows: what it has been told so far, and whether the stream has ended. */
const follow = async (cookie: string) => {
  const answer = await fetch(`${address}/api/live`, { headers: { cookie } });
  let told = '';
  let ended = false;
  const reading = (async () => {
    const words = new TextDecoder();
    for await (const bytes of answer.body ?? []) told += words.decode(bytes, { stream: true });
    ended = true;
  })().catch(() => {
    ended = true;
  });
  const until = async (met: () => boolean): Promise<void> => {
    const before = Date.now();
    while (!met()) {
      if (Date.now() - before > 10_000) throw new Error(`not told in time: ${told}`);
      await new Promise((next) => setImmediate(next));
    }
  };
  return { answer, reading, told: () => told, ended: () => ended, until };
};
const member = async (role: 'coach' | 'manager' | 'student', academyId: string) => {
  const one = await createMembership(database.db, { academyId, role, name: role });
  if (role === 'student') await createStudent(database.db, { academyId, membershipId: one.id });
  return { id: one.id, cookie: await cookieOf(door, one) };
};

it('tells the staff of an academy what happens there, by ids, and nobody else', async () => {
  const { id: academyId } = await createAcademy(database.db);
  const { id: elsewhere } = await createAcademy(database.db);
  const [coach, manager] = [await member('coach', academyId), await member('manager', academyId)];
  const stranger = await member('coach', elsewhere);
  const pages = await Promise.all([coach, manager, stranger].map(({ cookie }) => follow(cookie)));
  const [one, two, three] = pages;
  if (one === undefined || two === undefined || three === undefined) throw new Error('no page');
  expect(one.answer.headers.get('content-type')).toBe('text/event-stream; charset=utf-8');
  await Promise.all(pages.map((page) => page.until(() => page.told().includes('event: open'))));

  const submissionId = newId();
  const event = {
    ...{ id: newId(), academyId, kind: 'submission.claimed' },
    payload: { submissionId, name: 'Ida Lund' },
  };
  const arrived = () => one.told().includes(submissionId) && two.told().includes(submissionId);
  // The listening connection may still be on its way: told until it is heard.
  const telling = setInterval(() => void announce(database.db, [event]), 50);
  await one.until(arrived).finally(() => clearInterval(telling));
  expect(one.told()).toContain(`event: submission.claimed\ndata: {"id":"${event.id}"`);
  expect(one.told()).not.toContain('Ida');
  await three.until(() => three.told().includes(': here'));
  expect(three.told()).not.toContain(submissionId);
});

it('is for staff, eight pages a person, and ends with the session', async () => {
  const { id: academyId } = await createAcademy(database.db);
  const student = await member('student', academyId);
  expect((await fetch(`${address}/api/live`)).status).toBe(401);
  expect((await fetch(`${address}/api/live`, { headers: { cookie: student.cookie } })).status).toBe(403);
  const coach = await member('coach', academyId);
  const pages = await Promise.all(Array.from({ length: 8 }, () => follow(coach.cookie)));
  expect((await fetch(`${address}/api/live`, { headers: { cookie: coach.cookie } })).status).toBe(429);
  await fetch(`${address}/api/sign-out`, {
    method: 'POST',
    headers: { cookie: coach.cookie, 'content-type': 'application/json' },
    body: JSON.stringify({ everywhere: true }),
  });
  await Promise.all(pages.map((page) => page.until(page.ended)));
});

it('is closed at once when the door closes', async () => {
  const { id: academyId } = await createAcademy(database.db);
  const coach = await member('coach', academyId);
  const page = await follow(coach.cookie);
  await page.until(() => page.told().includes('event: open'));
  const before = Date.now();
  await door.app.close();
  await page.until(page.ended);
  expect(Date.now() - before).toBeLessThan(3_000);
});
