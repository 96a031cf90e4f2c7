import { describe, expect, it } from 'vitest';
import { pendingMigrations } from './apply-migrations.ts';
import { MigrationRefusal } from './migration-refusal.ts';

const first = { name: '1_first', sql: 'SELECT 1', checksum: 'a' };
const second = { name: '2_second', sql: 'SELECT 2', checksum: 'b' };
const applied = (name: string, checksum: string, finished = true) => ({
  migration_name: name,
  checksum,
  finished,
});

const kindOf = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    return error instanceof MigrationRefusal ? error.kind : 'another error';
  }
  return 'none';
};

describe('pendingMigrations', () => {
  it('gives what is not applied yet, in order', () => {
    expect(pendingMigrations([first, second], [])).toEqual([first, second]);
    expect(pendingMigrations([first, second], [applied('1_first', 'a')])).toEqual([second]);
    expect(pendingMigrations([first], [applied('1_first', 'a')])).toEqual([]);
  });

  it.each([
    ['newer-database', applied('3_third', 'c')],
    ['edited', applied('1_first', 'other')],
    ['failed', applied('1_first', 'a', false)],
  ])('refuses a database that is %s', (kind, row) => {
    expect(kindOf(() => pendingMigrations([first, second], [row]))).toBe(kind);
  });
});
