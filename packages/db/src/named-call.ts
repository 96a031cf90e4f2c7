import type pg from 'pg';
import type { Database } from './database.ts';

/** All that a crossing or a hot read needs: the pool beside Prisma. */
export type Pooled = Pick<Database, 'pool'>;

/** One SQL statement prepared once a connection: the name is how pg finds it again, so it must be unique to the text. */
export type NamedStatement = {
  readonly name: string;
  readonly text: string;
  /** How columns are read, where it is not pg's own way. */
  readonly types?: pg.CustomTypesConfig;
};

/** Runs a named statement outside any transaction of ours and returns its rows. */
export const namedCall = async <Row extends pg.QueryResultRow>(
  db: Pooled,
  statement: NamedStatement,
  values: readonly unknown[],
): Promise<Row[]> => {
  const result = await db.pool.query<Row>({
    name: statement.name,
    text: statement.text,
    values: [...values],
    ...(statement.types === undefined ? {} : { types: statement.types }),
  });
  return result.rows;
};
