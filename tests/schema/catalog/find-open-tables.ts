import type { Catalog } from './client.ts';

/**
 * Tables that do not keep tenants apart: row security off or not forced, no policy for the app role (identity: a policy
 * for it), a policy for everyone, a key that does not begin with the academy, a foreign key that leaves the academy out.
 */
export const findOpenTables = async (catalog: Catalog): Promise<string[]> => {
  const { rows } = await catalog.query<{ finding: string }>(`
    WITH ours AS (
      SELECT c.oid, c.oid::regclass::text AS name, n.nspname AS space, c.relname, c.relrowsecurity, c.relforcerowsecurity
      FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
      WHERE c.relkind IN ('r', 'p') AND n.nspname IN ('public', 'identity', 'system')
        AND c.relname <> '_prisma_migrations'
    ), policies AS (
      SELECT p.polrelid, p.polname, p.polroles, pg_get_expr(p.polqual, p.polrelid) AS shows,
        pg_get_expr(p.polwithcheck, p.polrelid) AS takes, 'app'::regrole = ANY (p.polroles) AS for_app
      FROM pg_policy p
    ), columns AS (
      SELECT a.attrelid, a.attname, a.attnum FROM pg_attribute a WHERE a.attnum > 0 AND NOT a.attisdropped
    )
    SELECT name || ': row security is off' AS finding FROM ours WHERE NOT relrowsecurity
    UNION ALL SELECT name || ': row security is not forced' FROM ours WHERE NOT relforcerowsecurity
    UNION ALL SELECT name || ': no policy for app' FROM ours o
      WHERE space <> 'identity' AND NOT EXISTS (SELECT FROM policies p WHERE p.polrelid = o.oid AND p.for_app)
    UNION ALL SELECT name || ': policy ' || p.polname || ' lets app into identity'
      FROM ours o JOIN policies p ON p.polrelid = o.oid WHERE space = 'identity' AND p.for_app
    UNION ALL SELECT name || ': policy ' || p.polname || ' is for everyone'
      FROM ours o JOIN policies p ON p.polrelid = o.oid WHERE 0 = ANY (p.polroles)
    UNION ALL SELECT name || ': policy ' || p.polname || ' does not name the academy'
      FROM ours o JOIN policies p ON p.polrelid = o.oid
      WHERE p.for_app AND NOT (coalesce(p.shows, '') LIKE '%current_academy()%'
        AND coalesce(p.takes, p.shows) LIKE '%current_academy()%')
    UNION ALL SELECT name || ': the key does not begin with academy_id' FROM ours o
      WHERE space = 'public' AND relname <> 'academy' AND NOT EXISTS (
        SELECT FROM pg_constraint k JOIN columns c ON c.attrelid = k.conrelid AND c.attnum = k.conkey[1]
        WHERE k.conrelid = o.oid AND k.contype = 'p' AND c.attname = 'academy_id')
    UNION ALL SELECT name || ': foreign key ' || k.conname || ' leaves the academy out'
      FROM ours o JOIN pg_constraint k ON k.conrelid = o.oid AND k.contype = 'f'
      WHERE space = 'public' AND NOT EXISTS (
        SELECT FROM columns c WHERE c.attrelid = k.conrelid AND c.attnum = k.conkey[1] AND c.attname = 'academy_id')
    ORDER BY 1`);
  return rows.map((row) => row.finding);
};
