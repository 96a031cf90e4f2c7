import { bands } from '@ballfirst/library/bands';
import type { BandRow } from '@ballfirst/library/types';
import type { Setting } from '@ballfirst/swing/marks';
import type { Band } from '@ballfirst/swing/measurement';

/**
 * The band a measurement is read against, for a club and a swing length; the first row that fits counts.
 *
 * @param rows - the built-in bands, or an academy's own
 * @returns null when no row fits
 */
export function bandFor(
  key: string,
  setting: Pick<Setting, 'club' | 'swingLength'>,
  rows: readonly BandRow[] = bands,
): Band | null {
  const row = rows.find(
    (candidate) =>
      candidate.key === key &&
      (candidate.clubs === 'any' || candidate.clubs.includes(setting.club)) &&
      (candidate.lengths === 'any' || candidate.lengths.includes(setting.swingLength)),
  );
  return row === undefined ? null : { low: row.low, high: row.high, label: row.label };
}
