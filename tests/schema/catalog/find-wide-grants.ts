import type { Catalog } from './client.ts';

/** The four roles: more than they must be. */
const roles = `
  SELECT r.rolname || ': role attribute too strong' AS finding FROM pg_roles r
  WHERE r.rolname IN ('owner', 'app', 'queue', 'crossing')
    AND (r.rolsuper OR r.rolbypassrls OR r.rolcreaterole OR r.rolcreatedb OR r.rolreplication)
  UNION ALL SELECT 'crossing: may log in' FROM pg_roles WHERE rolname = 'crossing' AND rolcanlogin
  UNION ALL SELECT m.member::regrole || ': inherits ' || m.roleid::regrole FROM pg_auth_members m
  WHERE m.roleid IN ('owner'::regrole, 'app'::regrole, 'queue'::regrole, 'crossing'::regrole)
    AND pg_has_role(m.member, m.roleid, 'USAGE') AND NOT (SELECT rolsuper FROM pg_roles WHERE oid = m.member)
  UNION ALL SELECT m.member::regrole || ': member of ' || m.roleid::regrole FROM pg_auth_members m
  WHERE m.member IN ('app'::regrole, 'queue'::regrole, 'crossing'::regrole)`;

/** Rights on tables and columns, one row each, of our schemas. */
const tableRights = `
  SELECT c.oid::regclass::text AS name, n.nspname AS space, a.grantee, a.privilege_type AS privilege, NULL AS col
  FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace, aclexplode(c.relacl) a
  WHERE n.nspname IN ('public', 'identity', 'system', 'bullmq')
  UNION ALL SELECT c.oid::regclass::text, n.nspname, a.grantee, a.privilege_type, t.attname
  FROM pg_attribute t JOIN pg_class c ON c.oid = t.attrelid JOIN pg_namespace n ON n.oid = c.relnamespace,
    aclexplode(t.attacl) a
  WHERE n.nspname IN ('public', 'identity', 'system', 'bullmq')`;

const tables = `
  WITH rights AS (${tableRights})
  SELECT name || ': everyone has ' || privilege AS finding FROM rights WHERE grantee = 0
  UNION ALL SELECT name || ': app has ' || privilege || ' in ' || space FROM rights
    WHERE grantee = 'app'::regrole AND space IN ('identity', 'bullmq')
  UNION ALL SELECT name || ': app has ' || privilege FROM rights
    WHERE grantee = 'app'::regrole AND (privilege NOT IN ('SELECT', 'INSERT', 'UPDATE', 'DELETE')
      OR (privilege = 'UPDATE' AND col IS NULL))
  UNION ALL SELECT name || ': app may change ' || col FROM rights
    WHERE grantee = 'app'::regrole AND privilege = 'UPDATE' AND (col IN ('academy_id', 'id')
      OR name IN ('audit_entry', 'standing_change', 'mail', 'effect', 'system.outbox'))
  UNION ALL SELECT name || ': app may delete history' FROM rights
    WHERE grantee = 'app'::regrole AND privilege = 'DELETE'
      -- A recorded voice goes with its draft and with its clip.
      AND name NOT IN ('mark', 'observation', 'measurement', 'idempotency', 'talk_through')
  UNION ALL SELECT name || ': queue has ' || privilege FROM rights
    WHERE grantee = 'queue'::regrole AND space <> 'bullmq'
  UNION ALL SELECT name || ': crossing has ' || privilege FROM rights
    WHERE grantee = 'crossing'::regrole AND privilege NOT IN ('SELECT', 'INSERT', 'UPDATE')`;

const schemas = `
  SELECT 'schema ' || n.nspname || ': ' || CASE a.grantee WHEN 0 THEN 'everyone' ELSE a.grantee::regrole::text END
    || ' has ' || a.privilege_type AS finding
  FROM pg_namespace n, aclexplode(n.nspacl) a
  WHERE n.nspname IN ('public', 'identity', 'system', 'crossing', 'bullmq')
    AND a.grantee <> n.nspowner
    AND (n.nspname, a.grantee::regrole::text, a.privilege_type) NOT IN (
      ('public', 'app', 'USAGE'), ('system', 'app', 'USAGE'), ('crossing', 'app', 'USAGE'),
      ('public', 'crossing', 'USAGE'), ('system', 'crossing', 'USAGE'), ('identity', 'crossing', 'USAGE'),
      ('crossing', 'crossing', 'USAGE'))
  UNION ALL SELECT 'database: ' || CASE a.grantee WHEN 0 THEN 'everyone' ELSE a.grantee::regrole::text END
    || ' has ' || a.privilege_type
  FROM pg_database d, aclexplode(d.datacl) a
  WHERE d.datname = current_database() AND a.grantee <> d.datdba
    AND (CASE a.grantee WHEN 0 THEN 'PUBLIC' ELSE a.grantee::regrole::text END, a.privilege_type) NOT IN (
      ('app', 'CONNECT'), ('queue', 'CONNECT'), ('queue', 'TEMPORARY'))`;

const owners = `
  SELECT c.oid::regclass || ': owned by ' || c.relowner::regrole AS finding FROM pg_class c
  WHERE c.relowner IN ('app'::regrole, 'crossing'::regrole)
    OR (c.relowner = 'queue'::regrole AND c.relnamespace NOT IN ('bullmq'::regnamespace, 'pg_toast'::regnamespace))
  UNION ALL SELECT p.oid::regprocedure || ': owned by app' FROM pg_proc p WHERE p.proowner = 'app'::regrole`;

const functions = `
  SELECT p.oid::regprocedure || ': ' || CASE a.grantee WHEN 0 THEN 'everyone' ELSE a.grantee::regrole::text END
    || ' may run it' AS finding
  FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace,
    aclexplode(coalesce(p.proacl, acldefault('f', p.proowner))) a
  WHERE n.nspname IN ('public', 'identity', 'system', 'crossing') AND a.grantee <> p.proowner
    AND (a.grantee = 0 OR NOT (a.grantee = 'app'::regrole OR (n.nspname = 'public' AND a.grantee = 'crossing'::regrole)))
    AND NOT EXISTS (SELECT FROM pg_depend d WHERE d.objid = p.oid AND d.deptype = 'e')`;

/** Every right that goes beyond what the four roles need. */
export const findWideGrants = async (catalog: Catalog): Promise<string[]> => {
  const findings: string[] = [];
  for (const question of [roles, tables, schemas, owners, functions]) {
    const { rows } = await catalog.query<{ finding: string }>(question);
    findings.push(...rows.map((row) => row.finding));
  }
  return findings.toSorted();
};
