import { createServer, type IncomingMessage, type Server } from 'node:http';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { databaseAway } from '../testing/database-away.ts';
import { type Door, openDoor } from '../testing/open-door.ts';

const db = databaseAway();
let site: Server;
let door: Door;
let asked: IncomingMessage[] = [];

beforeAll(async () => {
  site = createServer((request, response) => {
    asked.push(request);
    response.setHeader('content-type', 'text/html');
    response.setHeader('x-powered-by', 'something');
    response.setHeader('content-security-policy', "default-src * 'unsafe-inline'");
    if (request.url === '/busy') response.writeHead(503, { 'retry-after': '1' }).end('busy');
    else if (request.url === '/old') response.writeHead(307, { location: '/new' }).end();
    else response.end(`<p>${request.url}</p>`);
  });
  await new Promise<void>((ready) => site.listen(0, '127.0.0.1', ready));
  const address = site.address();
  if (address === null || typeof address === 'string') throw new Error('No port.');
  door = await openDoor(db, { siteUrl: `http://127.0.0.1:${address.port}` });
});
afterAll(async () => {
  await door.close();
  site.close();
  await db.close();
});

const get = (url: string, headers: Record<string, string> = {}) => door.app.inject({ url, headers });
const last = (): IncomingMessage => {
  const request = asked.at(-1);
  if (!request) throw new Error('The site was not asked.');
  return request;
};

it('passes pages on, with a nonce the site and the browser hear alike and no other', async () => {
  const first = await get('/home?week=2');
  expect([first.statusCode, first.body]).toEqual([200, '<p>/home?week=2</p>']);
  const policy = String(first.headers['content-security-policy']);
  expect(last().headers['content-security-policy']).toBe(policy);
  const script = policy.split('; ').find((it) => it.startsWith('script-src '));
  expect(script).toMatch(/^script-src 'self' 'nonce-[A-Za-z0-9+/]{22}==' 'strict-dynamic'$/);
  expect(policy).toContain("object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'");
  expect((await get('/home')).headers['content-security-policy']).not.toBe(policy);
});

it('sets the security headers over the site’s own', async () => {
  const { headers } = await get('/');
  expect(headers).toMatchObject({
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'referrer-policy': 'same-origin',
    'cross-origin-opener-policy': 'same-origin',
  });
  expect(headers['x-powered-by']).toBeUndefined();
  expect(headers['strict-transport-security']).toBeUndefined();
});

it('tells the site who it is itself, whatever the caller claims', async () => {
  const answer = await get('/', {
    cookie: 'ballfirst=token',
    accept: 'text/html',
    'content-security-policy': "script-src 'nonce-mine'",
    'x-request-id': 'mine',
    'x-forwarded-for': '10.0.0.1',
    'x-forwarded-host': 'evil.example',
    'x-forwarded-proto': 'https',
    'x-middleware-subrequest': 'middleware',
    forwarded: 'for=10.0.0.1',
    connection: 'close, x-secret',
    'x-secret': '1',
  });
  const { headers } = last();
  expect(headers).toMatchObject({
    cookie: 'ballfirst=token',
    accept: 'text/html',
    'x-request-id': answer.headers['x-request-id'],
    'x-forwarded-for': '127.0.0.1',
    'x-forwarded-host': '127.0.0.1:4100',
    'x-forwarded-proto': 'http',
  });
  expect(headers['content-security-policy']).not.toContain('nonce-mine');
  for (const name of ['x-middleware-subrequest', 'forwarded', 'x-secret'])
    expect(headers[name]).toBeUndefined();
});

it('passes on a move and a refusal once, without trying again', async () => {
  expect((await get('/old')).headers.location).toBe('/new');
  asked = [];
  expect((await get('/busy')).statusCode).toBe(503);
  expect(asked).toHaveLength(1);
});

it('answers HEAD without a body', async () => {
  const answer = await door.app.inject({ method: 'HEAD', url: '/home' });
  expect([answer.statusCode, answer.body]).toEqual([200, '']);
});

it('shows a page without addresses when the site is away', async () => {
  const alone = await openDoor(db, { siteUrl: 'http://127.0.0.1:9' });
  const answer = await alone.app.inject({ url: '/home' });
  expect(answer.statusCode).toBe(503);
  expect(answer.headers['retry-after']).toBe('2');
  expect(answer.headers['content-type']).toContain('text/html');
  expect(answer.body).toContain(String(answer.headers['x-request-id']));
  expect(answer.body).not.toMatch(/127\.0\.0\.1|ECONNREFUSED|:9\b/);
  const nonce = /'nonce-([^']+)'/.exec(String(answer.headers['content-security-policy']))?.[1];
  expect(answer.body).toContain(`<style nonce="${nonce}">`);
  expect(answer.body).not.toContain('<script');
  await alone.close();
});
