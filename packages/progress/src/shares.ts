import { wilsonInterval } from '@ballfirst/numbers/wilson-interval';
import type { WeekRow } from './week-row.ts';

/** A share of `of` balls with its 95 % interval, all 0..1. */
export type Share = {
  readonly share: number;
  readonly low: number;
  readonly high: number;
  readonly of: number;
};

/**
 * A share with its Wilson interval, or null where nothing was counted.
 *
 * @throws RangeError when count exceeds of, or either is no whole number
 * @source Wilson 1927 by way of numbers/wilson-interval
 */
export const shareOf = (count: number, of: number): Share | null =>
  of === 0 ? null : { share: count / of, ...wilsonInterval(count, of), of };

const over = (rows: readonly WeekRow[], count: keyof WeekRow & `tally${string}`): Share | null =>
  shareOf(
    rows.reduce((total, row) => total + row[count], 0),
    rows.reduce((total, row) => total + row.tallyBalls, 0),
  );

/** Shares of the tallied balls over one or more weeks. */
export const solidShare = (rows: readonly WeekRow[]): Share | null => over(rows, 'tallySolid');
export const fatShare = (rows: readonly WeekRow[]): Share | null => over(rows, 'tallyFat');
export const thinShare = (rows: readonly WeekRow[]): Share | null => over(rows, 'tallyThin');
export const toppedShare = (rows: readonly WeekRow[]): Share | null => over(rows, 'tallyTopped');

/** Share of the practised balls that met the rung's "clean". */
export const cleanShare = (rows: readonly WeekRow[]): Share | null =>
  shareOf(
    rows.reduce((total, row) => total + row.clean, 0),
    rows.reduce((total, row) => total + row.balls, 0),
  );
