import { bands } from '@ballfirst/library/bands';
import type { BandRow, Level, Sex } from '@ballfirst/library/types';
import type { Setting } from '@ballfirst/swing/marks/marks';
import type { Band } from '@ballfirst/swing/measurement';

/** What a band may depend on; a row that asks for what is not known does not fit. */
export type BandSetting = Pick<Setting, 'club' | 'swingLength'> &
  Partial<Pick<Setting, 'view'>> & { readonly sex?: Sex; readonly level?: Level };

const fits = <T>(wanted: readonly T[] | undefined, is: T | undefined): boolean =>
  wanted === undefined || (is !== undefined && wanted.includes(is));

/**
 * The band a measurement is read against, for a club, a swing length, a view and a player; the first row that fits counts.
 *
 * @param rows - the built-in bands, or an academy's own
 * @returns null when no row fits
 */
export function bandFor(key: string, setting: BandSetting, rows: readonly BandRow[] = bands): Band | null {
  const row = rows.find(
    (candidate) =>
      candidate.key === key &&
      (candidate.clubs === 'any' || candidate.clubs.includes(setting.club)) &&
      (candidate.lengths === 'any' || candidate.lengths.includes(setting.swingLength)) &&
      (setting.view === undefined || fits(candidate.views, setting.view)) &&
      fits(candidate.sexes, setting.sex) &&
      fits(candidate.levels, setting.level),
  );
  return row === undefined ? null : { low: row.low, high: row.high, label: row.label };
}
