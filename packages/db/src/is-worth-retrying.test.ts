import { describe, expect, it } from 'vitest';
import { isWorthRetrying } from './is-worth-retrying.ts';

describe('isWorthRetrying', () => {
  // Codes: PostgreSQL documentation, appendix A (class 40); P2034: Prisma's error reference.
  it.each([
    ['a serialization failure of pg', { code: '40001' }],
    ['a deadlock of pg', { code: '40P01' }],
    ['a write conflict of Prisma', { code: 'P2034' }],
    [
      'a raw query that Prisma wrapped',
      { code: 'P2010', meta: { driverAdapterError: { cause: { originalCode: '40001' } } } },
    ],
    ['an error with its cause', new Error('outer', { cause: { kind: 'TransactionWriteConflict' } })],
  ])('says yes to %s', (_, error) => {
    expect(isWorthRetrying(error)).toBe(true);
  });

  it.each([
    ['a broken rule', { code: '23505' }],
    ['a cancelled statement', { code: '57014' }],
    ['a text', '40001'],
    ['nothing', undefined],
  ])('says no to %s', (_, error) => {
    expect(isWorthRetrying(error)).toBe(false);
  });

  it('ends on an error that is its own cause', () => {
    const error: Error & { cause?: unknown } = new Error('round');
    error.cause = error;
    expect(isWorthRetrying(error)).toBe(false);
  });
});
