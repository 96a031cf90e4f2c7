import { namedCall, type Pooled } from '../named-call.ts';

const statement = {
  name: 'academies_to_seal',
  text: 'SELECT academy_id AS "academyId" FROM crossing.academies_to_seal($1)',
};

/** The academies that have audit rows written up to `now` and not sealed yet. */
export const academiesToSeal = async (db: Pooled, input: { now: Date }): Promise<string[]> => {
  const rows = await namedCall<{ academyId: string }>(db, statement, [input.now]);
  return rows.map((row) => row.academyId);
};
