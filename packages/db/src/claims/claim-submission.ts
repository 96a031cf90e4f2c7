import { newId } from '../ids.ts';
import { namedCall, type Pooled } from '../named-call.ts';
import type { Tx } from '../with-academy.ts';

/** What became of a claim: taken, renewed by its holder, or why not. */
export type ClaimOutcome =
  | 'claimed'
  | 'renewed'
  | 'not-found'
  | 'already-claimed'
  | 'already-answered'
  | 'wrong-state';

export type Claiming = {
  academyId: string;
  submissionId: string;
  membershipId: string;
  now: Date;
  expiresAt: Date;
  requestId: string;
};

const statement = {
  name: 'claim_submission',
  text: 'SELECT claim_submission($1, $2, $3, $4, $5, $6, $7, $8) AS outcome',
};

/**
 * Claims in one statement with its audit row and its event; of many at once exactly one wins. With `tx` it joins an open
 * transaction of the same academy.
 */
export const claimSubmissionRow = async (db: Pooled, it: Claiming, tx?: Tx): Promise<ClaimOutcome> => {
  const [audit, event] = [newId(), newId()];
  const rows =
    tx === undefined
      ? await namedCall<{ outcome: ClaimOutcome }>(db, statement, [
          it.academyId,
          it.submissionId,
          it.membershipId,
          it.now,
          it.expiresAt,
          audit,
          event,
          it.requestId,
        ])
      : await tx.$queryRaw<{ outcome: ClaimOutcome }[]>`
          SELECT public.claim_submission(${it.academyId}::uuid, ${it.submissionId}::uuid, ${it.membershipId}::uuid,
            ${it.now}::timestamptz, ${it.expiresAt}::timestamptz, ${audit}::uuid, ${event}::uuid,
            ${it.requestId}) AS outcome`;
  return rows[0]?.outcome ?? 'not-found';
};
