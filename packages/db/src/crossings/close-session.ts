import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'close_session', text: 'SELECT crossing.close_session($1, $2) AS closed' };

/** Ends the session of a token (its current or its former hash). @returns false when none was live */
export const closeSession = async (
  db: Pooled,
  input: { tokenHash: Uint8Array; now: Date },
): Promise<boolean> => {
  const [row] = await namedCall<{ closed: boolean }>(db, statement, [
    Buffer.from(input.tokenHash),
    input.now,
  ]);
  return row?.closed ?? false;
};
