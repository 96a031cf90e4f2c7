import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'change_password', text: 'SELECT crossing.change_password($1, $2, $3) AS changed' };

/** Replaces the password hash of a person. @returns false when there is no such person */
export const changePassword = async (
  db: Pooled,
  input: { personId: string; hash: string; now: Date },
): Promise<boolean> => {
  const [row] = await namedCall<{ changed: boolean }>(db, statement, [input.personId, input.hash, input.now]);
  return row?.changed ?? false;
};
