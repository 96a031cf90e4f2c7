import { namedCall, type Pooled } from '../named-call.ts';

const statement = {
  name: 'close_sessions_of_person',
  text: 'SELECT crossing.close_sessions_of_person($1, $2) AS closed',
};

/** Signs a person out everywhere. @returns how many live sessions ended */
export const closeSessionsOfPerson = async (
  db: Pooled,
  input: { personId: string; now: Date },
): Promise<number> => {
  const [row] = await namedCall<{ closed: number }>(db, statement, [input.personId, input.now]);
  return row?.closed ?? 0;
};
