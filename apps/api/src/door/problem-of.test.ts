import { ProblemError } from '@ballfirst/contracts/problems';
import { expect, it } from 'vitest';
import { problemOf } from './problem-of.ts';

it.each([
  ['57014', 'statement timeout'],
  ['55P03', 'lock timeout'],
  ['53300', 'too many connections'],
  ['57P01', 'terminated by an administrator'],
  ['40P01', 'deadlock'],
  ['08006', 'connection failure'],
  ['P2024', 'pool timeout, Prisma'],
  ['P2028', 'transaction timeout, Prisma'],
  ['ECONNREFUSED', 'nobody listens'],
])('%s is busy: %s', (code) => {
  expect(problemOf(Object.assign(new Error('x'), { code }))).toMatchObject({ code: 'busy', status: 503 });
  const wrapped = new Error('outer', { cause: Object.assign(new Error('x'), { code }) });
  expect(problemOf(wrapped).code).toBe('busy');
  const adapter = { message: 'x', meta: { driverAdapterError: { cause: { originalCode: code } } } };
  expect(problemOf(adapter).code).toBe('busy');
});

it('is busy for a pool that has no connection to give', () => {
  expect(problemOf(new Error('timeout exceeded when trying to connect')).code).toBe('busy');
});

it.each([
  new Error('relation "x" does not exist'),
  Object.assign(new Error('x'), { code: '23505' }),
  'text',
  null,
])('is unexpected, with not a word of it: %s', (error) => {
  const found = problemOf(error);
  expect(found).toMatchObject({ code: 'unexpected', status: 500, unforeseen: true });
  expect(found.detail).not.toMatch(/relation|text/);
});

it('keeps what a verb says', () => {
  const error = new ProblemError('tally-over-total', 'Eleven of ten.', [
    { path: 'tally', message: 'too many' },
  ]);
  expect(problemOf(error)).toEqual({
    code: 'tally-over-total',
    status: 422,
    detail: 'Eleven of ten.',
    fields: [{ path: 'tally', message: 'too many' }],
    unforeseen: false,
  });
});
