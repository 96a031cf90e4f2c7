import { readInboxPage } from '@ballfirst/db/reads/inbox-page';
import { readOpenSubmission } from '@ballfirst/db/reads/open-submission';
import { withAcademy } from '@ballfirst/db/with-academy';
import { createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';

let test: TestDatabase;
const submissions: { academyId: string; id: string }[] = [];
beforeAll(async () => {
  test = await testDatabase({ poolSize: 1 });
  for (let i = 0; i < 3; i += 1) submissions.push(await createSubmission(test.db));
});
afterAll(() => test.close());

type Step = { kind: 'verb' | 'throwing verb' | 'broken verb' | 'inbox' | 'open' | 'bare'; who: number };

const at = (who: number): { academyId: string; id: string } => {
  const found = submissions[who];
  if (found === undefined) throw new RangeError(`no academy ${who}`);
  return found;
};

const throws = async (work: Promise<unknown>): Promise<boolean> =>
  work.then(
    () => false,
    () => true,
  );

/** Runs a step on the only connection there is; true when it saw its own academy and nothing else. */
const run = async ({ kind, who }: Step): Promise<boolean> => {
  const { academyId, id } = at(who);
  if (kind === 'verb') {
    const seen = await withAcademy(test.db, academyId, (tx) => tx.submission.findMany());
    return seen.length === 1 && seen[0]?.id === id;
  }
  if (kind === 'throwing verb') {
    return throws(
      withAcademy(test.db, academyId, async () => {
        throw new Error('no');
      }),
    );
  }
  if (kind === 'broken verb') {
    return throws(withAcademy(test.db, academyId, (tx) => tx.$executeRawUnsafe('SELECT 1 / 0')));
  }
  if (kind === 'inbox') {
    const rows = await readInboxPage(test.db, { academyId, limit: 9, filters: {}, now: factoryNow });
    return rows.length === 1 && rows[0]?.id === id;
  }
  if (kind === 'open') {
    const other = at((who + 1) % submissions.length);
    const foreign = await readOpenSubmission(test.db, { academyId, submissionId: other.id });
    const own = await readOpenSubmission(test.db, { academyId, submissionId: id });
    return foreign === null && own?.submission.id === id;
  }
  const { rows } = await test.db.pool.query(
    `SELECT coalesce(current_setting('app.academy_id', true), '') AS tenant, (SELECT count(*)::int FROM submission) AS seen`,
  );
  return rows[0]?.tenant === '' && rows[0]?.seen === 0;
};

it('leaves no tenant behind on a pool of one, in whatever order requests come', async () => {
  const step: fc.Arbitrary<Step> = fc.record({
    kind: fc.constantFrom('verb', 'throwing verb', 'broken verb', 'inbox', 'open', 'bare'),
    who: fc.integer({ min: 0, max: 2 }),
  });
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 4, maxLength: 12 }), async (steps) => {
      const results = await Promise.all(steps.map(run));
      expect(results).toEqual(steps.map(() => true));
      expect(await run({ kind: 'bare', who: 0 })).toBe(true);
    }),
    { numRuns: 25, seed: 20261125 },
  );
});

it('would show a tenant that was left behind', async () => {
  const { academyId } = at(0);
  await test.db.pool.query(`SELECT set_config('app.academy_id', $1, false)`, [academyId]);
  expect(await run({ kind: 'bare', who: 0 })).toBe(false);
  await test.db.pool.query('RESET app.academy_id');
  expect(await run({ kind: 'bare', who: 0 })).toBe(true);
});
