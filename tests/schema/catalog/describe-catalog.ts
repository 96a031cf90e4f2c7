import type { Catalog } from './client.ts';

/** Everything Prisma's own diff cannot see, as lines of text in one order, the same on every supported server. */
const questions = [
  `SELECT 'table ' || c.oid::regclass || ' owner ' || c.relowner::regrole || ' rls ' || c.relrowsecurity || ' forced '
     || c.relforcerowsecurity || coalesce(' grants ' || (SELECT string_agg(a.grantee::regrole || '=' || a.privilege_type,
       ' ' ORDER BY a.grantee::regrole::text, a.privilege_type)
       FROM aclexplode(c.relacl) a WHERE a.grantee <> c.relowner), '') AS line
   FROM pg_class c WHERE c.relkind IN ('r', 'p', 'v', 'm', 'S') AND c.relnamespace::regnamespace::text = ANY ($1)`,
  `SELECT 'column ' || c.oid::regclass || '.' || t.attname || ' grants ' || string_agg(
     a.grantee::regrole || '=' || a.privilege_type, ' ' ORDER BY a.grantee::regrole::text, a.privilege_type)
   FROM pg_attribute t JOIN pg_class c ON c.oid = t.attrelid, aclexplode(t.attacl) a
   WHERE c.relnamespace::regnamespace::text = ANY ($1) GROUP BY c.oid, t.attname`,
  `SELECT 'policy ' || p.polrelid::regclass || ' ' || p.polname || ' for ' || p.polcmd::text || ' to ' || (
       SELECT string_agg(CASE r WHEN 0 THEN 'everyone' ELSE r::regrole::text END, ',') FROM unnest(p.polroles) r)
     || coalesce(' using ' || pg_get_expr(p.polqual, p.polrelid), '')
     || coalesce(' check ' || pg_get_expr(p.polwithcheck, p.polrelid), '')
   FROM pg_policy p JOIN pg_class c ON c.oid = p.polrelid WHERE c.relnamespace::regnamespace::text = ANY ($1)`,
  `SELECT 'check ' || k.conrelid::regclass || ' ' || k.conname || ' ' || pg_get_constraintdef(k.oid)
   FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid
   WHERE k.contype = 'c' AND c.relnamespace::regnamespace::text = ANY ($1)`,
  `SELECT 'index ' || pg_get_indexdef(i.indexrelid) FROM pg_index i JOIN pg_class c ON c.oid = i.indrelid
   WHERE i.indpred IS NOT NULL AND c.relnamespace::regnamespace::text = ANY ($1)`,
  `SELECT 'trigger ' || pg_get_triggerdef(t.oid) FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
   WHERE NOT t.tgisinternal AND c.relnamespace::regnamespace::text = ANY ($1)`,
  `SELECT 'function ' || p.oid::regprocedure || ' returns ' || pg_get_function_result(p.oid) || ' owner '
     || p.proowner::regrole || ' ' || p.provolatile::text || CASE WHEN p.prosecdef THEN ' definer' ELSE '' END
     || coalesce(' set ' || array_to_string(p.proconfig, ' '), '')
     || coalesce(' run by ' || (SELECT string_agg(CASE a.grantee WHEN 0 THEN 'everyone' ELSE a.grantee::regrole::text END,
       ',' ORDER BY a.grantee::regrole::text)
       FROM aclexplode(coalesce(p.proacl, acldefault('f', p.proowner))) a WHERE a.grantee <> p.proowner), '')
     || ' body sha256 ' || encode(sha256(convert_to(coalesce(p.prosrc, '') || coalesce(pg_get_function_sqlbody(p.oid), ''),
       'UTF8')), 'hex')
   FROM pg_proc p WHERE p.pronamespace::regnamespace::text = ANY ($1)`,
];

const schemas = ['public', 'identity', 'system', 'crossing'];

export const describeCatalog = async (catalog: Catalog): Promise<string> => {
  const lines: string[] = [];
  for (const question of questions) {
    const { rows } = await catalog.query<{ line: string }>(`SELECT line FROM (${question}) AS q(line)`, [
      schemas,
    ]);
    lines.push(...rows.map((row) => row.line.replaceAll(/\s+/g, ' ')));
  }
  return `${lines.toSorted().join('\n')}\n`;
};
