import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { withCatalog, withMutation } from './catalog/client.ts';
import { describeCatalog } from './catalog/describe-catalog.ts';
import { findOpenTables } from './catalog/find-open-tables.ts';
import { findUnlistedCrossings } from './catalog/find-unlisted-crossings.ts';
import { findWideGrants } from './catalog/find-wide-grants.ts';

let url: string;
let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
  url = test.superuserUrl;
});
afterAll(() => test.close());

describe('tenant tables', () => {
  it('keep their rows apart, each of them', async () => {
    expect(await withCatalog(url, findOpenTables)).toEqual([]);
  });

  it.each([
    ['CREATE TABLE public.stray (id uuid PRIMARY KEY)', /^stray: row security is off/],
    ['ALTER TABLE student DISABLE ROW LEVEL SECURITY', /^student: row security is off/],
    ['ALTER TABLE student NO FORCE ROW LEVEL SECURITY', /^student: row security is not forced/],
    ['DROP POLICY rows_of_own_academy ON student', /^student: no policy for app/],
    ['CREATE POLICY p ON student TO app USING (true)', /^student: policy p does not name the academy/],
    ['CREATE POLICY p ON student USING (true)', /^student: policy p is for everyone/],
    ['CREATE POLICY p ON identity.person TO app USING (true)', /lets app into identity/],
    ['CREATE TABLE public.stray (id uuid PRIMARY KEY, academy_id uuid)', /^stray: the key does not begin/],
    [
      'ALTER TABLE mark ADD UNIQUE (clip_id); ALTER TABLE observation ADD FOREIGN KEY (clip_id) REFERENCES mark (clip_id)',
      /^observation: foreign key .* leaves the academy out/,
    ],
  ])('are reported after: %s', async (mutation, finding) => {
    const findings = await withMutation(url, mutation, findOpenTables);
    expect(findings).toContainEqual(expect.stringMatching(finding));
  });
});

describe('grants', () => {
  it('give no role more than it needs', async () => {
    expect(await withCatalog(url, findWideGrants)).toEqual([]);
  });

  it.each([
    ['GRANT SELECT ON identity.person TO app', /^identity.person: app has SELECT in identity/],
    ['GRANT USAGE ON SCHEMA identity TO app', /^schema identity: app has USAGE/],
    ['GRANT SELECT ON student TO PUBLIC', /^student: everyone has SELECT/],
    ['GRANT TRUNCATE ON student TO app', /^student: app has TRUNCATE/],
    ['GRANT UPDATE ON student TO app', /^student: app has UPDATE/],
    ['GRANT UPDATE (academy_id) ON student TO app', /^student: app may change academy_id/],
    ['GRANT UPDATE (hash) ON audit_entry TO app', /^audit_entry: app may change hash/],
    ['GRANT DELETE ON audit_entry TO app', /^audit_entry: app may delete history/],
    ['GRANT SELECT ON student TO queue', /^student: queue has SELECT/],
    ['GRANT DELETE ON identity.session TO crossing', /^identity.session: crossing has DELETE/],
    ['ALTER ROLE app BYPASSRLS', /^app: role attribute too strong/],
    ['ALTER ROLE crossing LOGIN', /^crossing: may log in/],
    ['GRANT crossing TO app', /^app: member of crossing/],
    ['ALTER TABLE mail OWNER TO app', /^mail: owned by app/],
    ['GRANT CREATE ON SCHEMA public TO app', /^schema public: app has CREATE/],
    [
      'GRANT EXECUTE ON FUNCTION crossing.list_academies() TO PUBLIC',
      /list_academies\(\): everyone may run it/,
    ],
    ['GRANT EXECUTE ON FUNCTION crossing.list_academies() TO queue', /list_academies\(\): queue may run it/],
  ])('are reported after: %s', async (mutation, finding) => {
    const findings = await withMutation(url, mutation, findWideGrants);
    expect(findings).toContainEqual(expect.stringMatching(finding));
  });
});

describe('crossings', () => {
  it('are all listed in prisma/crossings.md and built alike', async () => {
    expect(await withCatalog(url, findUnlistedCrossings)).toEqual([]);
  });

  const stray = 'CREATE FUNCTION crossing.stray() RETURNS int LANGUAGE sql SECURITY DEFINER RETURN 1';
  it.each([
    [stray, /^stray\(\): not in prisma/],
    [stray, /^stray\(\): owned by/],
    [stray, /^stray\(\): search path not pinned/],
    ['ALTER FUNCTION crossing.list_academies() SECURITY INVOKER', /^list_academies\(\): runs as its caller/],
    ['ALTER FUNCTION crossing.list_academies() RESET search_path', /^list_academies\(\): search path/],
    ['DROP FUNCTION crossing.list_academies()', /^list_academies\(\): listed but not there/],
    [
      'ALTER FUNCTION public.instant_text(timestamptz) SECURITY DEFINER',
      /^instant_text.*: lies in schema public/,
    ],
  ])('are reported after: %s', async (mutation, finding) => {
    const findings = await withMutation(url, mutation, findUnlistedCrossings);
    expect(findings).toContainEqual(expect.stringMatching(finding));
  });
});

describe('what Prisma cannot see', () => {
  it('is as the kept snapshot says', async () => {
    await expect(await withCatalog(url, describeCatalog)).toMatchFileSnapshot('./catalog.snapshot.txt');
  });

  it.each([
    'DROP INDEX submission_inbox',
    'ALTER POLICY rows_of_own_academy ON mail USING (true)',
    'GRANT DELETE ON mail TO app',
    'REVOKE UPDATE (rung) ON programme FROM app',
    'ALTER TABLE mark DROP CONSTRAINT mark_source',
    'CREATE OR REPLACE FUNCTION public.audit_root() RETURNS bytea LANGUAGE sql IMMUTABLE RETURN NULL::bytea',
    'ALTER FUNCTION crossing.list_academies() OWNER TO owner',
    'CREATE VIEW public.peek AS SELECT 1 AS one',
  ])('differs after: %s', async (mutation) => {
    const before = await withCatalog(url, describeCatalog);
    expect(await withMutation(url, mutation, describeCatalog)).not.toBe(before);
  });
});
