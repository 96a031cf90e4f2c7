import { newId } from '../ids.ts';
import { namedCall, type Pooled } from '../named-call.ts';
import type { InboxKind } from '../reads/inbox-page.ts';

export type TakingNext = {
  academyId: string;
  membershipId: string;
  fault: string | null;
  now: Date;
  expiresAt: Date;
  requestId: string;
};
/** The Idempotency-Key of a request: whose, which, and a hash of what it asks for. */
export type OnceKey = { owner: string; key: string; requestHash: string };
export type Taken = { kind: InboxKind; id: string };

const next = { name: 'claim_next', text: 'SELECT kind, id FROM claim_next($1, $2, $3, $4, $5, $6, $7, $8)' };
const nextOnce = {
  name: 'claim_next_once',
  text: 'SELECT outcome, body FROM claim_next_once($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)',
};

const valuesOf = (it: TakingNext): unknown[] => [
  it.academyId,
  it.membershipId,
  it.fault,
  it.now,
  it.expiresAt,
  newId(),
  newId(),
  it.requestId,
];

/**
 * Takes the first row that nobody holds, with its audit row and its event, in one statement; null when there is none.
 * Rows that others are taking at this moment are passed over, never waited for.
 */
export const claimNextRow = async (db: Pooled, it: TakingNext): Promise<Taken | null> => {
  const [row] = await namedCall<Taken>(db, next, valuesOf(it));
  return row ?? null;
};

/**
 * The same, once for a key: again with it the first answer is given again.
 * @returns the answer as JSON text; `otherwise` when the key was used for another request
 */
export const claimNextOnce = async (
  db: Pooled,
  it: TakingNext,
  { owner, key, requestHash }: OnceKey,
): Promise<{ outcome: 'new' | 'stored' | 'otherwise'; body: string }> => {
  type Row = { outcome: 'new' | 'stored' | 'otherwise'; body: string };
  const [row] = await namedCall<Row>(db, nextOnce, [...valuesOf(it), owner, key, requestHash]);
  if (row === undefined) throw new TypeError('A function that always answers did not.');
  return row;
};
