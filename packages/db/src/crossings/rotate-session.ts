import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'rotate_session', text: 'SELECT crossing.rotate_session($1, $2, $3) AS rotated' };

/**
 * Gives a live session a new token and keeps the hash it had as its former one, for a short grace.
 * @returns false when the current hash is no longer the session's: another request rotated first
 */
export const rotateSession = async (
  db: Pooled,
  input: { tokenHash: Uint8Array; newHash: Uint8Array; now: Date },
): Promise<boolean> => {
  const [row] = await namedCall<{ rotated: boolean }>(db, statement, [
    Buffer.from(input.tokenHash),
    Buffer.from(input.newHash),
    input.now,
  ]);
  return row?.rotated ?? false;
};
