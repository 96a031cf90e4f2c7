import type { Catalog } from './client.ts';

/** The words that a CHECK constraint lets in, in order of the alphabet. @throws when there is no such constraint */
export const wordsOfCheck = async (
  catalog: Catalog,
  table: string,
  constraint: string,
): Promise<string[]> => {
  const { rows } = await catalog.query<{ definition: string }>(
    'SELECT pg_get_constraintdef(oid) AS definition FROM pg_constraint WHERE conrelid = $1::regclass AND conname = $2',
    [table, constraint],
  );
  const [row] = rows;
  if (row === undefined) throw new Error(`no constraint ${constraint} on ${table}`);
  return [...row.definition.matchAll(/'([^']*)'/g)].map((match) => match[1] ?? '').toSorted();
};
