import { randomUUID } from 'node:crypto';
import { withAcademy } from '@ballfirst/db/with-academy';
import { createAcademy, createMembership, createStudent } from '@ballfirst/testing/factories';
import { createProgramme } from '@ballfirst/testing/practice-factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { cookieOf } from '../testing/cookie-of.ts';
import { type Door, openDoor } from '../testing/open-door.ts';

const now = new Date('2026-03-10T09:00:00Z');
let database: TestDatabase;
let door: Door;
beforeAll(async () => {
  database = await testDatabase();
  door = await openDoor(database.db, { now, databaseUrl: database.appUrl });
});
afterAll(async () => {
  await door.close();
  await database.close();
});

/** A student with a programme, signed in; `log` sends an entry as a phone does. */
const practising = async (status = 'open') => {
  const { id: academyId } = await createAcademy(database.db);
  const member = await createMembership(database.db, { academyId, role: 'student', name: 'Ann Ash' });
  const { id: studentId } = await createStudent(database.db, { academyId, membershipId: member.id });
  const { id } = await createProgramme(database.db, {
    ...{ academyId, studentId, status, secondDrillId: 'line-brush', secondMinutes: 10 },
  });
  const cookie = await cookieOf(door, member);
  const log = (entry: object, key = randomUUID()) =>
    door.app.inject({
      method: 'POST',
      url: `/api/programmes/${id}/practice`,
      headers: { cookie, 'idempotency-key': key },
      payload: { rung: 'rehearsal', balls: 10, clean: 7, filmed: false, pain: 'none', ...entry },
    });
  const kept = () =>
    withAcademy(database.db, academyId, (tx) => tx.practiceEntry.findMany({ where: { academyId } }));
  return { log, kept };
};

it('ten thousand balls are refused in words, and so are none and more clean ones than were hit', async () => {
  const { log, kept } = await practising();
  const many = await log({ balls: 10_000, clean: 9_000 });
  expect([many.statusCode, many.json().code]).toEqual([400, 'bad-request']);
  expect(JSON.stringify(many.json().fields)).toContain('No more than 90 swings in one session');
  expect((await log({ balls: 0, clean: 0 })).json().code).toBe('bad-request');
  const clean = await log({ balls: 10, clean: 11 });
  expect([clean.statusCode, clean.json().code]).toEqual([422, 'practice-not-possible']);
  expect(await kept()).toEqual([]);
});

it('an entry for tomorrow counts for the day it is told on', async () => {
  const { log, kept } = await practising();
  const told = await log({ localDate: '2026-03-11' });
  expect(told.statusCode).toBe(201);
  expect(told.json().entry.localDate).toBe('2026-03-10');
  expect(await kept()).toMatchObject([{ localDate: '2026-03-10' }]);
});

it('the same entry twice is one, and answered alike', async () => {
  const { log, kept } = await practising();
  const key = randomUUID();
  const [first, second] = [await log({}, key), await log({}, key)];
  expect([first.statusCode, second.statusCode]).toEqual([201, 201]);
  expect(second.json()).toEqual(first.json());
  expect(await kept()).toHaveLength(1);
  expect((await log({ clean: 8 }, key)).json().code).toBe('key-used-otherwise');
});

it('after the end of a programme nothing more is logged', async () => {
  for (const status of ['done', 'replaced']) {
    const { log, kept } = await practising(status);
    const late = await log({});
    expect([late.statusCode, late.json()]).toMatchObject([
      409,
      { code: 'wrong-state', detail: 'This programme has ended.' },
    ]);
    expect(await kept()).toEqual([]);
  }
});

it('the second drill of a programme is refused the same, and logged once', async () => {
  const { log, kept } = await practising();
  const of = { drillId: 'line-brush' };
  expect((await log({ ...of, balls: 10_000, clean: 9_000 })).json().code).toBe('bad-request');
  expect((await log({ ...of, balls: 10, clean: 11 })).json().code).toBe('practice-not-possible');
  expect((await log({ drillId: 'no-such' })).json().fields).toMatchObject([{ path: 'drillId' }]);
  const key = randomUUID();
  const [first, again] = [
    await log({ ...of, localDate: '2026-03-11' }, key),
    await log({ ...of, localDate: '2026-03-11' }, key),
  ];
  expect(again.json()).toEqual(first.json());
  expect(first.json().entry).toMatchObject({ drillId: 'line-brush', localDate: '2026-03-10' });
  expect(await kept()).toMatchObject([{ second: true, localDate: '2026-03-10' }]);
  for (const status of ['done', 'replaced']) {
    const late = await (await practising(status)).log(of);
    expect([late.statusCode, late.json().code]).toEqual([409, 'wrong-state']);
  }
});

it('an unknown zone is refused with its field', async () => {
  const { slug } = await createAcademy(database.db);
  const joined = await door.app.inject({
    method: 'POST',
    url: `/api/join/${slug}`,
    headers: { 'idempotency-key': randomUUID() },
    payload: {
      ...{ name: 'Ann', email: `${randomUUID()}@example.test`, password: 'brush the grass', hand: 'right' },
      ...{ ageGroup: 'adult', zone: 'Mars/Olympus_Mons', guardian: null },
    },
  });
  expect([joined.statusCode, joined.json().code]).toEqual([400, 'bad-request']);
  expect(joined.json().fields).toMatchObject([{ path: 'zone' }]);
});
