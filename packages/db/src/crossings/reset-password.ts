import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'reset_password', text: 'SELECT crossing.reset_password($1, $2, $3) AS person' };

/**
 * Uses a link up: the new hash is written and every session of the person ends, in one step.
 * @returns the person, or null when the link does not work (any more)
 */
export const resetPassword = async (
  db: Pooled,
  input: { tokenHash: Uint8Array; hash: string; now: Date },
): Promise<string | null> => {
  const [row] = await namedCall<{ person: string | null }>(db, statement, [
    input.tokenHash,
    input.hash,
    input.now,
  ]);
  return row?.person ?? null;
};
