import type { BandRow } from '@ballfirst/library/types';
import type { Measurement, Reading } from '@ballfirst/swing/measurement';
import { read } from '@ballfirst/swing/read';
import { type BandSetting, bandFor } from './band-for.ts';

/** Measurements read against the bands of their club, swing length, view and player, in the same order. */
export function readAll(
  measurements: readonly Measurement[],
  setting: BandSetting,
  rows?: readonly BandRow[],
): readonly Reading[] {
  return measurements.map((measurement) => read(measurement, bandFor(measurement.key, setting, rows)));
}
