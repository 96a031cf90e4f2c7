import { operations } from '@ballfirst/contracts/http/operations';
import type { Operation } from '@ballfirst/contracts/operation';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { routerPath } from './door/route-of.ts';
import { databaseAway } from './testing/database-away.ts';
import { type Door, openDoor } from './testing/open-door.ts';

const db = databaseAway();
const lines: { message: string; fields: Record<string, unknown> }[] = [];
const keep = (fields: Record<string, unknown>, message: string) => void lines.push({ message, fields });
let door: Door;
beforeAll(async () => {
  door = await openDoor(db, { log: { info: keep, warn: keep, error: keep } });
});
afterAll(async () => {
  await door.close();
  await db.close();
});

it('mounts every operation of the table', () => {
  const all: readonly Operation[] = Object.values(operations);
  const away = all.filter((it) => !door.app.hasRoute({ method: it.method, url: routerPath(it.path) }));
  expect(away.map((it) => it.id)).toEqual([]);
});

it('says busy, when to come again and nothing of the inside while the database is away', async () => {
  const answer = await door.app.inject({ url: '/api/academies/low-point' });
  expect(answer.statusCode).toBe(503);
  expect(answer.headers['retry-after']).toBe('2');
  const problem = answer.json();
  expect(problem).toMatchObject({ type: 'urn:ballfirst:busy', code: 'busy', status: 503 });
  expect(answer.body).not.toMatch(/127|ECONN|postgres|pg/i);
  const logged = lines.find((it) => it.message === 'a request failed');
  expect(logged?.fields).toMatchObject({ requestId: problem.requestId, route: '/api/academies/:academy' });
});

it('logs the pattern of an address, never the address', async () => {
  await door.app.inject({ url: '/api/clips/0190f6a0-0000-7000-8000-000000000001?token=secret' });
  expect(JSON.stringify(lines)).not.toMatch(/secret|0190f6a0-0000-7000-8000-000000000001/);
  const route = '/api/clips/:id';
  expect(lines).toContainEqual({
    message: 'answered',
    fields: expect.objectContaining({ route, status: 401 }),
  });
});

it('lives without its parts, is ready only with all of them, and says which is away', async () => {
  expect((await door.app.inject({ url: '/livez' })).json()).toEqual({ live: true });
  const ready = await door.app.inject({ url: '/readyz' });
  expect(ready.statusCode).toBe(503);
  expect(ready.json()).toEqual({
    ready: false,
    stopping: false,
    parts: { database: false, site: false, media: true },
  });
  expect(ready.body).not.toContain('127.0.0.1');
});

it('counts requests by pattern in Prometheus text', async () => {
  await door.app.inject({ url: '/livez' });
  const answer = await door.app.inject({ url: '/metrics' });
  expect(answer.headers['content-type']).toBe('text/plain; version=0.0.4');
  expect(answer.body).toMatch(
    /^ballfirst_http_requests_total\{method="GET",route="\/livez",status="2xx"\} \d+$/m,
  );
  expect(answer.body).toMatch(/^ballfirst_process_memory_bytes \d+$/m);
  for (const line of answer.body.trimEnd().split('\n'))
    expect(line).toMatch(/^(# (HELP|TYPE) \w+ .+|\w+(\{.*\})? [\d.]+)$/);
});

it('gives the document of the tree, and a page of it that runs nothing', async () => {
  const document = (await door.app.inject({ url: '/api/openapi.json' })).json();
  expect(document.openapi).toBe('3.1.0');
  const page = await door.app.inject({ url: '/api/docs' });
  expect(page.statusCode).toBe(200);
  expect(page.body).not.toMatch(/<script|\son\w+=|https?:\/\/|javascript:/i);
  const nonce = /'nonce-([^']+)'/.exec(String(page.headers['content-security-policy']))?.[1];
  expect(page.body).toContain(`<style nonce="${nonce}">`);
  for (const { id } of Object.values(operations)) expect(page.body).toContain(`<section id="${id}">`);
  for (const [, name] of page.body.matchAll(/href="#([\w-]+)"/g)) expect(page.body).toContain(`id="${name}"`);
});
