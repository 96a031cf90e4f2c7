import { weekOf } from '@ballfirst/calendar/week-of';
import { emptyWeek, type LoggedEntry, type SentSwing, type WeekRow } from './week-row.ts';

const sum = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((total, item) => total + of(item), 0);

type Item = { readonly studentId: string; readonly localDate: string };

const byStudentAndWeek = <T extends Item>(items: readonly T[]): ReadonlyMap<string, readonly T[]> => {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = `${weekOf(item.localDate)} ${item.studentId}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
};

/**
 * All weeks of all students from scratch, by student and week. Adding one item with `addEntry` or `addSwing` gives the
 * same rows: the counts are whole numbers, so it is exact in any order.
 *
 * @throws RangeError on an impossible local date
 */
export const rollUp = (
  entries: readonly LoggedEntry[],
  submissions: readonly SentSwing[],
): readonly WeekRow[] => {
  const practised = byStudentAndWeek(entries);
  const sent = byStudentAndWeek(submissions);
  const rows = [...new Set([...practised.keys(), ...sent.keys()])].map((key): WeekRow => {
    const logged = practised.get(key) ?? [];
    const swings = sent.get(key) ?? [];
    const [week = '', ...owner] = key.split(' ');
    return {
      ...emptyWeek(owner.join(' '), week),
      entries: logged.length,
      balls: sum(logged, (entry) => entry.balls),
      clean: sum(logged, (entry) => entry.clean),
      days: new Set(logged.map((entry) => entry.localDate)).size,
      pains: logged.filter((entry) => entry.pain !== 'none').length,
      swings: swings.length,
      tallyBalls: sum(swings, (swing) => swing.tally.balls),
      tallySolid: sum(swings, (swing) => swing.tally.solid),
      tallyFat: sum(swings, (swing) => swing.tally.fat),
      tallyThin: sum(swings, (swing) => swing.tally.thin),
      tallyTopped: sum(swings, (swing) => swing.tally.topped),
    };
  });
  const order = (row: WeekRow): string => `${row.studentId} ${row.week}`;
  return rows.sort((a, b) => (order(a) < order(b) ? -1 : 1));
};
