import pg from 'pg';

/** What a checker needs of a connection: inside a transaction it sees the mutation that is about to be rolled back. */
export type Catalog = Pick<pg.Client, 'query'>;

/** Applies a mutation as superuser, looks, and takes it back: how each checker proves that it can fail. */
export const withMutation = async <T>(
  url: string,
  mutation: string,
  look: (catalog: Catalog) => Promise<T>,
): Promise<T> => {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query('BEGIN');
    await client.query(mutation);
    return await look(client);
  } finally {
    await client.query('ROLLBACK');
    await client.end();
  }
};

/** Looks at the catalog as it is. */
export const withCatalog = <T>(url: string, look: (catalog: Catalog) => Promise<T>): Promise<T> =>
  withMutation(url, 'SELECT 1', look);
