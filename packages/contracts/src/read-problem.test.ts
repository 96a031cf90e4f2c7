import { expect, it } from 'vitest';
import { Problem } from './problem-body.ts';
import { readProblem } from './read-problem.ts';

const good = {
  type: 'urn:ballfirst:not-found',
  title: 'x',
  status: 404,
  code: 'not-found',
  detail: 'There is nothing here for you under this address.',
  requestId: 'r1',
};
const bodies: unknown[] = [
  good,
  { ...good, fields: [{ path: 'club', message: 'Choose one.' }] },
  { ...good, fields: [{ path: 'club' }] },
  { ...good, fields: 'none' },
  { ...good, code: 'toString' },
  { ...good, code: 'no-such-code' },
  { ...good, status: 404.5 },
  { ...good, status: '404' },
  { ...good, requestId: undefined },
  null,
  'a page of a proxy',
  [],
];

it.each(bodies)('agrees with the schema of the document on %j', (body) => {
  const parsed = Problem.safeParse(body);
  expect(readProblem(body)).toEqual(parsed.success ? parsed.data : null);
});
