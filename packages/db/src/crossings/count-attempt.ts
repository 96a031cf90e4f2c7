import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'count_attempt', text: 'SELECT crossing.count_attempt($1, $2, $3) AS attempts' };

/**
 * Counts one try under a key (`sign-in:account:…`, `join:address:…`) and returns how many fell in the running window,
 * this one included. The window starts with the first try and is `windowSeconds` long.
 */
export const countAttempt = async (
  db: Pooled,
  input: { key: string; windowSeconds: number; now: Date },
): Promise<number> => {
  const [row] = await namedCall<{ attempts: number }>(db, statement, [
    input.key,
    input.windowSeconds,
    input.now,
  ]);
  return row?.attempts ?? 0;
};
