import type { Catalog } from './client.ts';

/** A table whose rows belong to academies, and the column that says to which. */
export type TenantTable = { name: string; key: 'academy_id' | 'id' };

/** Every table of schema public is a tenant table, the outbox too; Prisma's own ledger is none. */
export const tenantTables = async (catalog: Catalog): Promise<TenantTable[]> => {
  const { rows } = await catalog.query<TenantTable>(`
    SELECT c.oid::regclass::text AS name, CASE c.relname WHEN 'academy' THEN 'id' ELSE 'academy_id' END AS key
    FROM pg_class c
    WHERE c.relkind IN ('r', 'p')
      AND c.relnamespace IN ('public'::regnamespace, 'system'::regnamespace)
      AND c.relname <> '_prisma_migrations'
    ORDER BY 1`);
  return rows;
};
