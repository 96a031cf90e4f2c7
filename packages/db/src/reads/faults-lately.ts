import { namedCall, type Pooled } from '../named-call.ts';

/** Swings and students with a fault or a cause in a span; `key` null: all of its kind, a student counted once. */
export type FaultsLatelyRow = {
  span: 'week' | 'month' | 'before';
  kind: 'fault' | 'cause';
  key: string | null;
  swings: number;
  students: number;
};

const statement = { name: 'faults_lately', text: 'SELECT * FROM faults_lately($1, $2)' };

/** What went wrong in seven days, in thirty, and in the thirty before the seven, in one statement. */
export const readFaultsLatelyRows = (
  db: Pooled,
  query: { academyId: string; now: Date },
): Promise<FaultsLatelyRow[]> => namedCall<FaultsLatelyRow>(db, statement, [query.academyId, query.now]);
