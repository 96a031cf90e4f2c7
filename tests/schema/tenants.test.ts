import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { type TenantTable, tenantTables } from './catalog/tenant-tables.ts';
import { oneOfEach } from './one-of-each.ts';

// The tables come from the catalog of the template's clone, so a new one is tested without being named here.
const test: TestDatabase = await testDatabase();
const superuser = new pg.Client({ connectionString: test.superuserUrl });
const app = new pg.Client({ connectionString: test.appUrl });
await superuser.connect();
const tables = await tenantTables(superuser);

let mine: string;
let theirs: string;
beforeAll(async () => {
  await app.connect();
  mine = await oneOfEach(test.db);
  theirs = await oneOfEach(test.db);
});
afterAll(async () => {
  await app.end();
  await superuser.end();
  await test.close();
});

/** Runs one statement as the app role for an academy (null: none set) and takes it back. */
const asApp = async (
  academyId: string | null,
  text: string,
  values: unknown[] = [],
): Promise<pg.QueryResult> => {
  await app.query('BEGIN');
  try {
    if (academyId !== null) await app.query(`SELECT set_config('app.academy_id', $1, true)`, [academyId]);
    return await app.query(text, values);
  } finally {
    await app.query('ROLLBACK');
  }
};

const theirRow = async ({ name, key }: TenantTable): Promise<unknown> => {
  const { rows } = await superuser.query(
    `SELECT to_jsonb(t) AS row FROM ${name} t WHERE ${key} = $1 LIMIT 1`,
    [theirs],
  );
  return rows[0]?.row;
};

it('looks at the tables of this database', () => {
  expect(inject('ballfirstDatabase').template).toBeTruthy();
  expect(tables.length).toBeGreaterThanOrEqual(21);
});

describe.each(tables)('$name', (table) => {
  const { name, key } = table;

  it('has a row of both academies to refuse', async () => {
    const { rows } = await superuser.query(`SELECT DISTINCT ${key} AS id FROM ${name}`);
    expect(rows.map((row) => row.id)).toEqual(expect.arrayContaining([mine, theirs]));
  });

  it('shows the rows of the academy that is set and no other', async () => {
    const { rows } = await asApp(mine, `SELECT DISTINCT ${key} AS id FROM ${name}`);
    expect(rows).toEqual([{ id: mine }]);
    const asked = await asApp(mine, `SELECT 1 FROM ${name} WHERE ${key} = $1`, [theirs]);
    expect(asked.rowCount).toBe(0);
  });

  it('shows nothing and takes nothing when no academy is set, or an empty one', async () => {
    for (const none of [null, '']) {
      expect((await asApp(none, `SELECT 1 FROM ${name}`)).rowCount).toBe(0);
      const insert = asApp(
        none,
        `INSERT INTO ${name} SELECT * FROM jsonb_populate_record(NULL::${name}, $1)`,
        [await theirRow(table)],
      );
      await expect(insert).rejects.toThrow(/row-level security/);
    }
  });

  it('takes no row for another academy', async () => {
    const row = await theirRow(table);
    const insert = `INSERT INTO ${name} SELECT * FROM jsonb_populate_record(NULL::${name}, $1)`;
    await expect(asApp(mine, insert, [row])).rejects.toThrow(/row-level security/);
  });

  it('moves no row into another academy, even if somebody granted the column', async () => {
    const move = `UPDATE ${name} SET ${key} = $1`;
    await expect(asApp(mine, move, [theirs])).rejects.toThrow(/permission denied/);
    await superuser.query('BEGIN');
    try {
      await superuser.query(`GRANT UPDATE ON ${name} TO app`);
      await superuser.query('SET LOCAL ROLE app');
      await superuser.query(`SELECT set_config('app.academy_id', $1, true)`, [mine]);
      await expect(superuser.query(move, [theirs])).rejects.toThrow(/row-level security/);
    } finally {
      await superuser.query('ROLLBACK');
    }
  });

  it('changes and deletes no row of another academy, even if somebody granted it', async () => {
    await superuser.query('BEGIN');
    try {
      await superuser.query(`GRANT UPDATE, DELETE ON ${name} TO app`);
      await superuser.query('SET LOCAL ROLE app');
      await superuser.query(`SELECT set_config('app.academy_id', $1, true)`, [mine]);
      const changed = await superuser.query(`UPDATE ${name} SET ${key} = ${key} WHERE ${key} = $1`, [theirs]);
      expect(changed.rowCount).toBe(0);
      const deleted = await superuser.query(`DELETE FROM ${name} WHERE ${key} = $1`, [theirs]);
      expect(deleted.rowCount).toBe(0);
    } finally {
      await superuser.query('ROLLBACK');
    }
  });
});

describe('the other roles', () => {
  it.each(['person', 'credential', 'session', 'attempt', 'link'])(
    'keep app out of identity.%s',
    async (name) => {
      await expect(asApp(mine, `SELECT 1 FROM identity.${name}`)).rejects.toThrow(/permission denied/);
    },
  );

  it('keep queue out of everything but its own schema', async () => {
    const queue = new pg.Client({ connectionString: test.queueUrl });
    await queue.connect();
    await expect(queue.query('SELECT 1 FROM public.student')).rejects.toThrow(/permission denied/);
    await expect(queue.query('SELECT * FROM crossing.list_academies()')).rejects.toThrow(/permission denied/);
    await expect(queue.query('CREATE SCHEMA other')).rejects.toThrow(/permission denied/);
    expect((await queue.query('SELECT version FROM bullmq.migration')).rowCount).toBeGreaterThan(0);
    await queue.end();
  });

  it('show the owner no tenant row: it migrates, it does not look', async () => {
    const owner = new pg.Client({ connectionString: test.ownerUrl });
    await owner.connect();
    for (const { name } of tables) expect((await owner.query(`SELECT 1 FROM ${name}`)).rowCount).toBe(0);
    await owner.end();
  });
});
