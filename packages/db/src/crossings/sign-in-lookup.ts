import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'sign_in_lookup', text: 'SELECT * FROM crossing.sign_in_lookup($1)' };

/** The person of an address (compared in lower case) and the argon2id hash of the password; null: no such account. */
export const signInLookup = async (
  db: Pooled,
  input: { email: string },
): Promise<{ personId: string; name: string; hash: string } | null> => {
  const [row] = await namedCall<{ personId: string; name: string; hash: string }>(db, statement, [
    input.email,
  ]);
  return row ?? null;
};
