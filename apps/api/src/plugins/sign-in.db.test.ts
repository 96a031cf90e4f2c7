import { randomUUID } from 'node:crypto';
import { createAcademy } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Door, openDoor } from '../testing/open-door.ts';

let database: TestDatabase;
let door: Door;
let secure: Door;
beforeAll(async () => {
  database = await testDatabase();
  door = await openDoor(database.db);
  secure = await openDoor(database.db, { publicUrl: 'https://lessons.example.test' });
});
afterAll(async () => {
  await door.close();
  await secure.close();
  await database.close();
});

const password = 'brush the grass';
const join = async (at: Door, email: string, slug: string) =>
  at.app.inject({
    method: 'POST',
    url: `/api/join/${slug}`,
    headers: { 'idempotency-key': randomUUID() },
    payload: { name: 'Ann', email, password, hand: 'right', ageGroup: 'adult', zone: 'UTC', guardian: null },
  });
const signIn = (at: Door, email: string, secret = password) =>
  at.app.inject({ method: 'POST', url: '/api/sign-in', payload: { email, password: secret } });
const cookieFrom = (answer: { headers: Record<string, unknown> }): string =>
  String(answer.headers['set-cookie']).split(';')[0] ?? '';

describe('signing in', () => {
  it('sets a cookie no script can read, `__Host-` and Secure by https', async () => {
    const { slug } = await createAcademy(database.db);
    const joined = await join(secure, 'ann@example.test', slug);
    expect(joined.statusCode).toBe(201);
    const answer = await signIn(secure, 'ann@example.test');
    expect(answer.statusCode).toBe(200);
    const set = String(answer.headers['set-cookie']);
    expect(set).toMatch(/^__Host-ballfirst=[\w-]{43};/);
    for (const flag of ['Path=/', 'HttpOnly', 'Secure', 'SameSite=Lax']) expect(set).toContain(flag);
    expect(set).not.toContain('Domain');
    expect(answer.headers['strict-transport-security']).toBe('max-age=31536000');
    expect(answer.body).not.toContain(cookieFrom(answer).split('=')[1]);
  });

  it('has a plain name on this machine, where there is no https', async () => {
    const { slug } = await createAcademy(database.db);
    await join(door, 'bo@example.test', slug);
    const set = String((await signIn(door, 'bo@example.test')).headers['set-cookie']);
    expect(set).toMatch(/^ballfirst=/);
    expect(set).not.toContain('Secure');
  });

  it('answers an unknown address and a wrong password alike', async () => {
    const { slug } = await createAcademy(database.db);
    await join(door, 'cy@example.test', slug);
    const wrong = await signIn(door, 'cy@example.test', 'not it at all');
    const unknown = await signIn(door, 'nobody@example.test', 'not it at all');
    expect(wrong.statusCode).toBe(401);
    const { requestId: _a, ...first } = wrong.json();
    const { requestId: _b, ...second } = unknown.json();
    expect(first).toEqual(second);
    expect(wrong.headers['set-cookie']).toBeUndefined();
  });

  it('signs out: the cookie is cleared and its token is worth nothing', async () => {
    const { slug } = await createAcademy(database.db);
    const cookie = cookieFrom(await join(door, 'di@example.test', slug));
    const out = await door.app.inject({
      method: 'POST',
      url: '/api/sign-out',
      headers: { cookie },
      payload: { everywhere: false },
    });
    expect(out.statusCode).toBe(204);
    expect(String(out.headers['set-cookie'])).toMatch(/^ballfirst=;.*Expires=Thu, 01 Jan 1970/);
    const me = await door.app.inject({ url: '/api/me', headers: { cookie } });
    expect(me.statusCode).toBe(401);
    expect(me.json()).toMatchObject({ code: 'not-signed-in', type: 'urn:ballfirst:not-signed-in' });
  });

  it('gives a browser a new token after a day, and the site none: it could not pass it on', async () => {
    const { slug } = await createAcademy(database.db);
    const late = await openDoor(database.db);
    const cookie = cookieFrom(await join(late, 'ed@example.test', slug));
    late.now = new Date(late.now.getTime() + 25 * 3_600_000);
    const bySite = await late.app.inject({ url: '/api/me', headers: { cookie } });
    expect(bySite.statusCode).toBe(200);
    expect(bySite.headers['set-cookie']).toBeUndefined();
    const headers = { cookie, 'sec-fetch-site': 'same-origin' };
    const byBrowser = await late.app.inject({ url: '/api/me', headers });
    expect(byBrowser.statusCode).toBe(200);
    const fresh = cookieFrom(byBrowser);
    expect(fresh).toMatch(/^ballfirst=/);
    expect(fresh).not.toBe(cookie);
    const again = await late.app.inject({ url: '/api/me', headers: { ...headers, cookie: fresh } });
    expect(again.statusCode).toBe(200);
    await late.close();
  });

  it('slows one address down that guesses', async () => {
    const busy = await openDoor(database.db);
    const attempt = () =>
      busy.app.inject({ method: 'POST', url: '/api/sign-in', payload: { email: 'no', password: 'x' } });
    for (let tried = 0; tried < 60; tried += 1) expect((await attempt()).statusCode).toBe(400);
    const refused = await attempt();
    expect(refused.statusCode).toBe(429);
    expect(refused.json()).toMatchObject({ code: 'too-many-tries' });
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0);
    await busy.close();
  });
});

describe('the origin of a write', () => {
  const write = (headers: Record<string, string>) =>
    door.app.inject({ method: 'POST', url: '/api/sign-out', headers, payload: { everywhere: false } });

  it.each([
    [{ origin: 'https://elsewhere.example' }],
    [{ origin: 'null' }],
    [{ origin: 'http://127.0.0.1:4101' }],
    [{ 'sec-fetch-site': 'cross-site' }],
    [{ 'sec-fetch-site': 'same-site', origin: 'http://127.0.0.1:4100' }],
    [{ 'sec-fetch-site': 'none' }],
  ])('is refused: %j', async (headers) => {
    const answer = await write(headers);
    expect(answer.statusCode).toBe(403);
    expect(answer.json()).toMatchObject({ code: 'wrong-origin' });
  });

  it.each([
    [{ origin: 'http://127.0.0.1:4100' }],
    [{ origin: 'http://localhost:4100' }],
    [{ 'sec-fetch-site': 'same-origin' }],
    [{}],
  ])('is taken: %j', async (headers) => {
    expect((await write(headers)).json()).toMatchObject({ code: 'not-signed-in' });
  });

  it('is looked at on uploads too', async () => {
    const headers = { origin: 'https://elsewhere.example' };
    const answer = await door.app.inject({ method: 'POST', url: '/uploads', headers });
    expect(answer.json()).toMatchObject({ code: 'wrong-origin' });
  });
});
