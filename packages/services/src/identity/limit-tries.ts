import { createHash } from 'node:crypto';
import { ProblemError } from '@ballfirst/contracts/problems';
import { countAttempt } from '@ballfirst/db/crossings/count-attempt';
import type { Resources } from '../context.ts';

/** Tries allowed in one window of a quarter of an hour. Several people share an address; an account is one person's. */
const windowSeconds = 900;
export const triesAtMost = { account: 20, letters: 5, address: 200, join: 40 } as const;

/** What stands in the table instead of an address: no personal data in a counter. */
const hidden = (of: string): string => createHash('sha256').update(of).digest('base64url').slice(0, 22);

/**
 * Counts a try and refuses when there were too many of one kind.
 * @throws ProblemError too-many-tries
 */
export const limitTries = async (call: {
  readonly resources: Resources;
  readonly what: 'sign-in' | 'join' | 'reset' | 'link';
  readonly email: string;
  readonly address: string;
}): Promise<void> => {
  const { db, clock } = call.resources;
  const now = clock.now();
  const count = (kind: string, of: string): Promise<number> =>
    countAttempt(db, { key: `${call.what}:${kind}:${hidden(of)}`, windowSeconds, now });
  const byAddress = await count('address', call.address);
  const few = call.what === 'join' || call.what === 'reset';
  if (byAddress > (few ? triesAtMost.join : triesAtMost.address)) throw new ProblemError('too-many-tries');
  const accountAtMost = call.what === 'reset' ? triesAtMost.letters : triesAtMost.account;
  if ((await count('account', call.email)) > accountAtMost) throw new ProblemError('too-many-tries');
};
