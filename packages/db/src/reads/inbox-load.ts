import { namedCall, type Pooled } from '../named-call.ts';

export type InboxLoad = { late: number; due: number; coaches: number };

const statement = { name: 'inbox_load', text: 'SELECT * FROM inbox_load($1, $2, $3, $4)' };

/** What is late, what is promised until an instant and how many coaches there are; counts end at `atMost`. */
export const readInboxLoad = async (
  db: Pooled,
  query: { academyId: string; now: Date; until: Date; atMost: number },
): Promise<InboxLoad> => {
  const [row] = await namedCall<InboxLoad>(db, statement, [
    query.academyId,
    query.now,
    query.until,
    query.atMost,
  ]);
  return row ?? { late: 0, due: 0, coaches: 0 };
};
