import { namedCall, type Pooled } from '../named-call.ts';

export type AuditVerdict = {
  /** Every sealed row verifies and follows the one before it. */
  whole: boolean;
  sealed: number;
  unsealed: number;
  /** When the oldest unsealed row was written; whole also means: not more than five minutes ago. */
  oldestUnsealedAt: Date | null;
  /** The number of the first row that does not verify or does not follow, null when all do. */
  firstBadSeq: number | null;
  headHash: string | null;
};

type Row = Omit<AuditVerdict, 'firstBadSeq'> & { firstBadSeq: string | null };
const statement = { name: 'verify_audit', text: 'SELECT * FROM verify_audit($1)' };

/** Recomputes the academy's audit chain from its first row. Call outside `withAcademy`. */
export const verifyAudit = async (db: Pooled, input: { academyId: string }): Promise<AuditVerdict> => {
  const [row] = await namedCall<Row>(db, statement, [input.academyId]);
  if (row === undefined) throw new Error('verify_audit gave no row');
  return { ...row, firstBadSeq: row.firstBadSeq === null ? null : Number(row.firstBadSeq) };
};
