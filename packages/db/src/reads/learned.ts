import { namedCall, type Pooled } from '../named-call.ts';

/** What an academy has learned up to now. Instants are ISO 8601 texts (UTC, milliseconds). */
export type Learned = {
  /** Since when it learns; null: it does not. */
  since: string | null;
  resetAt: string | null;
  /** When the order of the submission was asked for; null: it was not, or no submission was named. */
  orderShownAt: string | null;
  /** What was named for the submission before its order was shown. */
  named: { diagnosisId: string; causeId: string } | null;
  /** The choices that count, as many `swings` as were chosen just so. */
  choices: {
    fault: string;
    causeId: string;
    views: string[];
    blind: boolean;
    overruled: boolean;
    swings: number;
  }[];
};

const statement = { name: 'learned', text: 'SELECT learned($1, $2, $3) AS document' };

/** What an academy has learned up to an instant, in one statement. */
export const readLearnedRow = async (
  db: Pooled,
  query: { academyId: string; submissionId: string | null; now: Date },
): Promise<Learned> => {
  const { academyId, submissionId, now } = query;
  const [row] = await namedCall<{ document: Learned | null }>(db, statement, [academyId, submissionId, now]);
  if (!row?.document) throw new RangeError('There is no such academy.');
  return row.document;
};
