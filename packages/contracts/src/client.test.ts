import { expect, expectTypeOf, it } from 'vitest';
import { AnsweredProblem, answerOf, createClient, ifMatch, type Reply } from './client.ts';
import type { InboxItem } from './http/inbox.ts';

const json = (status: number, body: unknown) => async () =>
  new Response(JSON.stringify(body), { status, headers: { 'content-type': 'application/json' } });

it('asks the address, the query and the headers it was given', async () => {
  const asked: Request[] = [];
  const api = createClient({
    baseUrl: 'http://127.0.0.1:1',
    headers: { cookie: 'ballfirst=x' },
    fetch: (request) => {
      asked.push(request);
      return json(200, { items: [], next: null })();
    },
  });
  const inbox = await answerOf(api.GET('/api/inbox', { params: { query: { limit: 5 } } }));
  expect(inbox).toEqual({ items: [], next: null });
  expectTypeOf<Reply<'readInbox'>['items'][number]>().toEqualTypeOf<InboxItem>();
  expect(asked[0]?.url).toBe('http://127.0.0.1:1/api/inbox?limit=5');
  expect(asked[0]?.headers.get('cookie')).toBe('ballfirst=x');
});

it('throws a problem with its code, fields and request id', async () => {
  const problem = {
    type: 'urn:ballfirst:not-found',
    title: 'x',
    status: 404,
    code: 'not-found',
    detail: 'There is nothing here for you under this address.',
    requestId: 'r1',
  };
  const api = createClient({ baseUrl: 'http://127.0.0.1:1', fetch: json(404, problem) });
  const failed = answerOf(api.GET('/api/clips/{id}', { params: { path: { id: 'x' } } }));
  await expect(failed).rejects.toBeInstanceOf(AnsweredProblem);
  await expect(failed).rejects.toMatchObject({ code: 'not-found', status: 404, requestId: 'r1' });
});

it('makes a problem of an answer that is none', async () => {
  const api = createClient({ baseUrl: 'http://127.0.0.1:1', fetch: json(502, 'bad gateway') });
  await expect(answerOf(api.GET('/api/me'))).rejects.toMatchObject({ code: 'busy', status: 502 });
});

it('writes a version as a strong tag', () => {
  expect(ifMatch(3)).toBe('"3"');
});
