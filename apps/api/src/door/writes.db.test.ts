import { randomUUID } from 'node:crypto';
import type { Membership } from '@ballfirst/db/generated/client';
import { withAcademy } from '@ballfirst/db/with-academy';
import {
  createAcademy,
  createClip,
  createMembership,
  createStudent,
  createSubmission,
} from '@ballfirst/testing/factories';
import { createProgramme } from '@ballfirst/testing/practice-factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cookieOf } from '../testing/cookie-of.ts';
import { type Door, openDoor } from '../testing/open-door.ts';

let database: TestDatabase;
let door: Door;
let academyId = '';
let coach: Membership;
let coachCookie = '';
beforeAll(async () => {
  database = await testDatabase();
  door = await openDoor(database.db, { now: new Date('2026-03-10T09:00:00Z') });
  academyId = (await createAcademy(database.db)).id;
  coach = await createMembership(database.db, { academyId });
  coachCookie = await cookieOf(door, coach);
});
afterAll(async () => {
  await door.close();
  await database.close();
});

const studentAtDoor = async () => {
  const member = await createMembership(database.db, { academyId, role: 'student', name: 'A student' });
  const student = await createStudent(database.db, { academyId, membershipId: member.id });
  return { student, cookie: await cookieOf(door, member) };
};

describe('a key for what creates', () => {
  const entry = { rung: 'rehearsal', balls: 10, clean: 7, filmed: false, pain: 'none' };
  const practising = async () => {
    const { student, cookie } = await studentAtDoor();
    const programme = await createProgramme(database.db, { academyId, studentId: student.id });
    const log = (headers: Record<string, string>, payload: object = entry) =>
      door.app.inject({
        method: 'POST',
        url: `/api/programmes/${programme.id}/practice`,
        headers: { cookie, ...headers },
        payload,
      });
    const logged = () =>
      withAcademy(database.db, academyId, (tx) =>
        tx.practiceEntry.count({ where: { programmeId: programme.id } }),
      );
    return { log, logged };
  };

  it('is asked for', async () => {
    const { log, logged } = await practising();
    const answer = await log({});
    expect(answer.statusCode).toBe(400);
    expect(answer.json()).toMatchObject({ code: 'bad-request', fields: [{ path: 'idempotency-key' }] });
    expect(await logged()).toBe(0);
  });

  it('gives the same answer byte by byte, once done', async () => {
    const { log, logged } = await practising();
    const key = { 'idempotency-key': randomUUID() };
    const first = await log(key);
    const second = await log(key);
    expect([first.statusCode, second.statusCode]).toEqual([201, 201]);
    expect(second.body).toBe(first.body);
    expect(await logged()).toBe(1);
  });

  it('does one thing when the same request comes twenty times at once', async () => {
    const { log, logged } = await practising();
    const key = { 'idempotency-key': randomUUID() };
    const answers = await Promise.all(Array.from({ length: 20 }, () => log(key)));
    const good = answers.filter((it) => it.statusCode === 201);
    expect(good.length).toBeGreaterThan(0);
    expect(new Set(good.map((it) => it.body)).size).toBe(1);
    for (const other of answers.filter((it) => it.statusCode !== 201)) {
      expect(['same-key-at-work', 'busy']).toContain(other.json().code);
    }
    expect(await logged()).toBe(1);
  });

  it('is refused for another body', async () => {
    const { log, logged } = await practising();
    const key = { 'idempotency-key': randomUUID() };
    await log(key);
    const answer = await log(key, { ...entry, balls: 11 });
    expect([answer.statusCode, answer.json().code]).toEqual([422, 'key-used-otherwise']);
    expect(await logged()).toBe(1);
  });
});

describe('a version for what two may edit', () => {
  const reviewing = async () => {
    const submission = await createSubmission(database.db, {
      academyId,
      claimedBy: coach.id,
      claimedAt: door.now,
      claimExpiresAt: new Date(door.now.getTime() + 1_800_000),
    });
    const { studentId } = submission;
    const clip = await createClip(database.db, { academyId, studentId, submissionId: submission.id });
    const url = `/api/submissions/${submission.id}/clips/${clip.id}/marks`;
    const save = (headers: Record<string, string>) =>
      door.app.inject({
        method: 'PUT',
        url,
        headers: { cookie: coachCookie, ...headers },
        payload: { marks: [], observations: [] },
      });
    const read = () => door.app.inject({ url, headers: { cookie: coachCookie } });
    return { save, read };
  };

  it('is asked for with If-Match', async () => {
    const { save } = await reviewing();
    for (const headers of [{}, { 'if-match': '*' }, { 'if-match': '"0", "1"' }]) {
      const answer = await save(headers as Record<string, string>);
      expect([answer.statusCode, answer.json().code]).toEqual([428, 'precondition-missing']);
    }
  });

  it('is read as a strong ETag, taken once, and refused when it is old', async () => {
    const { save, read } = await reviewing();
    const before = (await read()).headers.etag;
    expect(before).toBe('"0"');
    const saved = await save({ 'if-match': String(before) });
    expect(saved.statusCode).toBe(200);
    expect(saved.headers.etag).toBe('"1"');
    expect((await read()).headers.etag).toBe('"1"');
    const late = await save({ 'if-match': String(before) });
    expect([late.statusCode, late.json().code]).toEqual([412, 'changed-meanwhile']);
    expect((await save({ 'if-match': 'W/"1"' })).statusCode).toBe(200);
    expect((await save({ 'if-match': '"someone-elses"' })).statusCode).toBe(412);
  });
});

describe('a request that is not in the form', () => {
  it('is told which fields, in words', async () => {
    const { cookie } = await studentAtDoor();
    const answer = await door.app.inject({
      method: 'POST',
      url: '/api/submissions',
      headers: { cookie, 'idempotency-key': randomUUID() },
      payload: { clipIds: [], club: 'putter' },
    });
    expect(answer.statusCode).toBe(400);
    const { fields, requestId } = answer.json();
    expect(requestId).toBe(answer.headers['x-request-id']);
    expect(fields).toContainEqual({ path: 'clipIds', message: 'Add a video of your swing before you send.' });
    expect(fields.map((it: { path: string }) => it.path)).toContain('tally');
  });

  it.each([
    ['{"everywhere":', 'application/json', 400],
    ['', 'application/json', 400],
    ['everywhere=false', 'application/x-www-form-urlencoded', 415],
    ['false', 'text/plain', 415],
    [`{"everywhere":false,"x":"${'x'.repeat(300_000)}"}`, 'application/json', 413],
    ['{"__proto__":{"x":1},"everywhere":false}', 'application/json', 400],
  ])('%#: is refused', async (payload, type, status) => {
    const answer = await door.app.inject({
      method: 'POST',
      url: '/api/sign-out',
      headers: { cookie: coachCookie, 'content-type': type },
      payload,
    });
    expect(answer.statusCode).toBe(status);
    expect(answer.json().status).toBe(status);
  });
});
