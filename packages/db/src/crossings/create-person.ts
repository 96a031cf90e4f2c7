import { namedCall, type Pooled } from '../named-call.ts';

const statement = {
  name: 'create_person',
  text: 'SELECT crossing.create_person($1, $2, $3, $4, $5) AS created',
};

/**
 * Writes a person and the hash of the password. The address is kept in lower case.
 * @returns false when the address is taken (nothing is written)
 */
export const createPerson = async (
  db: Pooled,
  input: { id: string; email: string; name: string; hash: string; now: Date },
): Promise<boolean> => {
  const [row] = await namedCall<{ created: boolean }>(db, statement, [
    input.id,
    input.email,
    input.name,
    input.hash,
    input.now,
  ]);
  return row?.created ?? false;
};
