import { namedCall, type Pooled } from '../named-call.ts';

export type Seal = {
  /** How many rows this call sealed. */
  sealed: number;
  /** Number of the last sealed row of the academy, 0 when none. */
  headSeq: number;
  /** SHA-256 of the last sealed row in hex, null when none. */
  headHash: string | null;
};

const statement = { name: 'seal_audit', text: 'SELECT * FROM crossing.seal_audit($1, $2)' };

/**
 * Chains the academy's unsealed audit rows: only those of transactions that had ended before the oldest one still
 * running began, in the order the transactions got their ids, so that no late commit can slip in before a sealed row.
 */
export const sealAudit = async (db: Pooled, input: { academyId: string; now: Date }): Promise<Seal> => {
  const [row] = await namedCall<{ sealed: number; headSeq: string; headHash: string | null }>(db, statement, [
    input.academyId,
    input.now,
  ]);
  return {
    sealed: row?.sealed ?? 0,
    headSeq: Number(row?.headSeq ?? 0),
    headHash: row?.headHash ?? null,
  };
};
