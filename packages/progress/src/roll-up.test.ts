import { weekOf } from '@ballfirst/calendar/week-of';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addEntry, addSwing } from './add-to-week.ts';
import { rollUp } from './roll-up.ts';
import { cleanShare, fatShare, shareOf } from './shares.ts';
import { emptyWeek, type LoggedEntry, type SentSwing, type WeekRow } from './week-row.ts';

const dates = fc.constantFrom(
  '2026-12-27',
  '2026-12-28',
  '2026-12-31',
  '2027-01-01',
  '2027-01-03',
  '2027-01-04',
);
const students = fc.constantFrom('first', 'second');
const entries: fc.Arbitrary<LoggedEntry> = fc
  .record({
    studentId: students,
    localDate: dates,
    balls: fc.integer({ min: 1, max: 30 }),
    pain: fc.constantFrom('none' as const, 'new' as const, 'worse' as const),
  })
  .map((entry) => ({ ...entry, clean: Math.floor(entry.balls / 2) }));
const swings: fc.Arbitrary<SentSwing> = fc.record({
  studentId: students,
  localDate: dates,
  tally: fc.record({
    balls: fc.constant(10),
    solid: fc.integer({ min: 0, max: 3 }),
    fat: fc.integer({ min: 0, max: 3 }),
    thin: fc.integer({ min: 0, max: 3 }),
    topped: fc.integer({ min: 0, max: 1 }),
  }),
});
type Item = { kind: 'entry'; item: LoggedEntry } | { kind: 'swing'; item: SentSwing };
const item: fc.Arbitrary<Item> = fc.oneof(
  entries.map((one): Item => ({ kind: 'entry', item: one })),
  swings.map((one): Item => ({ kind: 'swing', item: one })),
);

const oneByOne = (items: readonly Item[]): readonly WeekRow[] => {
  const rows = new Map<string, WeekRow>();
  const days = new Set<string>();
  for (const one of items) {
    const { studentId, localDate } = one.item;
    const key = `${studentId} ${weekOf(localDate)}`;
    const row = rows.get(key) ?? emptyWeek(studentId, weekOf(localDate));
    if (one.kind === 'swing') rows.set(key, addSwing(row, one.item));
    else {
      const day = `${studentId} ${localDate}`;
      rows.set(key, addEntry(row, one.item, !days.has(day)));
      days.add(day);
    }
  }
  return [...rows.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, row]) => row);
};

describe('rollUp', () => {
  it('adding one by one, in any order, equals starting from scratch', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 30 }), (items) => {
        const logged = items.flatMap((one) => (one.kind === 'entry' ? [one.item] : []));
        const sent = items.flatMap((one) => (one.kind === 'swing' ? [one.item] : []));
        const scratch = rollUp(logged, sent);
        expect(oneByOne(items)).toEqual(scratch);
        expect(oneByOne(items.toReversed())).toEqual(scratch);
      }),
      { numRuns: 150, seed: 5 },
    );
  });
  it('counts a day once and keeps weeks apart across the year', () => {
    const entry: LoggedEntry = {
      studentId: 'first',
      localDate: '2026-12-31',
      balls: 10,
      clean: 6,
      pain: 'none',
    };
    const rows = rollUp([entry, entry, { ...entry, localDate: '2027-01-04', pain: 'new' }], []);
    expect(rows).toMatchObject([
      { week: '2026-12-28', entries: 2, balls: 20, clean: 12, days: 1, pains: 0 },
      { week: '2027-01-04', entries: 1, days: 1, pains: 1 },
    ]);
  });
  it('refuses what belongs elsewhere', () => {
    const row = emptyWeek('first', '2026-12-28');
    const entry: LoggedEntry = {
      studentId: 'first',
      localDate: '2027-01-04',
      balls: 10,
      clean: 6,
      pain: 'none',
    };
    expect(() => addEntry(row, entry, true)).toThrow(/week/);
    expect(() => addEntry(row, { ...entry, studentId: 'second' }, true)).toThrow(/student/);
  });
});

describe('shares', () => {
  it('gives a share with its doubt, or nothing', () => {
    const row = { ...emptyWeek('first', '2026-12-28'), tallyBalls: 10, tallyFat: 4, balls: 20, clean: 12 };
    expect(fatShare([row, row])).toMatchObject({ share: 0.4, of: 20 });
    expect(cleanShare([row])).toMatchObject({ share: 0.6, of: 20 });
    expect(fatShare([])).toBeNull();
    expect(() => shareOf(3, 2)).toThrow(RangeError);
  });
});
