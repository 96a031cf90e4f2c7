import { weekOf } from '@ballfirst/calendar/week-of';
import type { LoggedEntry, SentSwing, WeekRow } from './week-row.ts';

const checkOwner = (row: WeekRow, item: { readonly studentId: string; readonly localDate: string }): void => {
  if (row.studentId !== item.studentId) throw new RangeError('The entry belongs to another student.');
  if (row.week !== weekOf(item.localDate)) throw new RangeError('The entry belongs to another week.');
};

/**
 * The week with one practice entry more.
 *
 * @param firstOfItsDay - no other entry of this student is counted for the same local date yet
 * @throws RangeError when student or week differ
 */
export const addEntry = (row: WeekRow, entry: LoggedEntry, firstOfItsDay: boolean): WeekRow => {
  checkOwner(row, entry);
  return {
    ...row,
    entries: row.entries + 1,
    balls: row.balls + entry.balls,
    clean: row.clean + entry.clean,
    days: row.days + (firstOfItsDay ? 1 : 0),
    pains: row.pains + (entry.pain === 'none' ? 0 : 1),
  };
};

/** The week with one submission more. @throws RangeError when student or week differ */
export const addSwing = (row: WeekRow, { studentId, localDate, tally }: SentSwing): WeekRow => {
  checkOwner(row, { studentId, localDate });
  return {
    ...row,
    swings: row.swings + 1,
    tallyBalls: row.tallyBalls + tally.balls,
    tallySolid: row.tallySolid + tally.solid,
    tallyFat: row.tallyFat + tally.fat,
    tallyThin: row.tallyThin + tally.thin,
    tallyTopped: row.tallyTopped + tally.topped,
  };
};
