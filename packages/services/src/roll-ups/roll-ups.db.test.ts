import { withAcademy } from '@ballfirst/db/with-academy';
import {
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
  tenBalls,
} from '@ballfirst/testing/factories';
import { createEntry, createProgramme } from '@ballfirst/testing/practice-factories';
import { systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rollUpEntry } from './roll-up-entry.ts';
import { rollUpSwing } from './roll-up-swing.ts';
import { rollUpWeek } from './roll-up-week.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());

const week = '2026-03-09';

/** A student in Auckland with five entries on three days and two swings; one more of each lies outside the week. */
const setting = async () => {
  const membership = await createMembership(test.db, { role: 'student', zone: 'Pacific/Auckland' });
  const { academyId } = membership;
  const { id: studentId } = await createStudent(test.db, { academyId, membershipId: membership.id });
  const swing = (sentAt: string) =>
    createSubmission(test.db, { academyId, studentId, sentAt: new Date(sentAt), tally: tenBalls });
  // Monday 00:00 in Auckland, at +13 by the IANA time zone database, is Sunday 11:00 UTC.
  const first = await swing('2026-03-08T11:00:00Z');
  const swings = [first, await swing('2026-03-15T10:59:59Z'), await swing('2026-03-08T10:59:59Z')];
  const programme = await createProgramme(test.db, { academyId, studentId, submissionId: first.id });
  const days = ['2026-03-09', '2026-03-09', '2026-03-11', '2026-03-15', '2026-03-15', '2026-03-16'];
  const entries: string[] = [];
  for (const [index, localDate] of days.entries()) {
    const pain = index === 3 ? 'new' : 'none';
    // Every other one of the second drill: a week counts what was practised, whichever drill it was of.
    const second = index % 2 === 1;
    entries.push((await createEntry(test.db, programme, { localDate, pain, clean: index, second })).id);
  }
  const ctx = systemWorld(test.db, factoryNow).contextOf(academyId);
  return { academyId, studentId, ctx, entries, swings: swings.map(({ id }) => id) };
};
type Setting = Awaited<ReturnType<typeof setting>>;

const stored = ({ academyId, studentId }: Setting) =>
  withAcademy(test.db, academyId, (tx) =>
    tx.rollUp.findMany({
      where: { academyId, studentId },
      orderBy: { week: 'asc' },
      omit: { academyId: true, updatedAt: true },
    }),
  );
const counted = {
  ...{ week, entries: 5, balls: 50, clean: 10, days: 3, pains: 1, swings: 2 },
  ...{ tallyBalls: 20, tallySolid: 8, tallyFat: 12, tallyThin: 0, tallyTopped: 0 },
};

describe('a week', () => {
  it('grown one by one, twice and at the same time, equals the week from scratch', async () => {
    const it = await setting();
    const { ctx } = it;
    const all = () =>
      Promise.all([
        ...it.entries.map((entryId) => rollUpEntry({ ctx, input: { entryId } })),
        ...it.swings.map((submissionId) => rollUpSwing({ ctx, input: { submissionId } })),
      ]);
    const [once, twice] = [await all(), await all()];
    expect(once.every(({ added }) => added)).toBe(true);
    expect(twice.some(({ added }) => added)).toBe(false);
    const grown = await stored(it);
    expect(grown).toHaveLength(3);
    expect(grown[1]).toEqual({ studentId: it.studentId, ...counted });
    for (const row of grown) {
      expect(await rollUpWeek({ ctx, input: { studentId: it.studentId, week: row.week } })).toEqual(row);
    }
    expect(await stored(it)).toEqual(grown);
  });

  it('counted from scratch adds nothing when the events come afterwards', async () => {
    const it = await setting();
    const { ctx } = it;
    const scratch = await rollUpWeek({ ctx, input: { studentId: it.studentId, week } });
    expect(scratch).toEqual({ studentId: it.studentId, ...counted });
    for (const entryId of it.entries.slice(0, 5)) {
      expect(await rollUpEntry({ ctx, input: { entryId } })).toEqual({ added: false });
    }
    expect(await stored(it)).toEqual([scratch]);
  });

  it('is exact when counting from scratch runs among the events', async () => {
    const it = await setting();
    const { ctx } = it;
    await Promise.all([
      ...it.entries.map((entryId) => rollUpEntry({ ctx, input: { entryId } })),
      ...Array.from({ length: 3 }, () => rollUpWeek({ ctx, input: { studentId: it.studentId, week } })),
      ...it.swings.map((submissionId) => rollUpSwing({ ctx, input: { submissionId } })),
    ]);
    expect((await stored(it))[1]).toEqual({ studentId: it.studentId, ...counted });
  });

  it('without anything is empty, and one that begins on another day is refused', async () => {
    const { academyId, id: studentId } = await createStudent(test.db);
    const ctx = systemWorld(test.db, factoryNow).contextOf(academyId);
    expect(await rollUpWeek({ ctx, input: { studentId, week } })).toMatchObject({ entries: 0, swings: 0 });
    expect(() => rollUpWeek({ ctx, input: { studentId, week: '2026-03-10' } })).toThrow(RangeError);
  });

  it('of another academy is not there', async () => {
    const it = await setting();
    const ctx = systemWorld(test.db, factoryNow).contextOf((await createMembership(test.db)).academyId);
    const missing = { code: 'not-found' };
    const [entryId = '', submissionId = ''] = [it.entries[0], it.swings[0]];
    await expect(rollUpEntry({ ctx, input: { entryId } })).rejects.toMatchObject(missing);
    await expect(rollUpSwing({ ctx, input: { submissionId } })).rejects.toMatchObject(missing);
    await expect(rollUpWeek({ ctx, input: { studentId: it.studentId, week } })).rejects.toMatchObject(
      missing,
    );
    expect(await stored(it)).toEqual([]);
  });
});
