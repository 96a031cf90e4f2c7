import { namedCall, type Pooled } from '../named-call.ts';

export type LapsedClaim = {
  academyId: string;
  submissionId: string;
  claimedBy: string;
  claimExpiresAt: Date;
};

const statement = { name: 'lapsed_claims', text: 'SELECT * FROM crossing.lapsed_claims($1, $2)' };

/** Waiting submissions whose claim was left alone past its end, earliest first. */
export const lapsedClaims = (db: Pooled, input: { now: Date; limit: number }): Promise<LapsedClaim[]> =>
  namedCall<LapsedClaim>(db, statement, [input.now, input.limit]);
