import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'mark_outbox_sent', text: 'SELECT crossing.mark_outbox_sent($1, $2) AS marked' };

/** Marks events as handed to the queue. @returns how many were not marked before */
export const markOutboxSent = async (
  db: Pooled,
  input: { ids: readonly string[]; now: Date },
): Promise<number> => {
  const [row] = await namedCall<{ marked: number }>(db, statement, [input.ids, input.now]);
  return row?.marked ?? 0;
};
