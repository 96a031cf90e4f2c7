import type { BandRow } from '@ballfirst/library/types';
import type { Setting } from '@ballfirst/swing/marks';
import type { Measurement, Reading } from '@ballfirst/swing/measurement';
import { read } from '@ballfirst/swing/read';
import { bandFor } from './band-for.ts';

/** Measurements read against the bands of their club and swing length, in the same order. */
export function readAll(
  measurements: readonly Measurement[],
  setting: Pick<Setting, 'club' | 'swingLength'>,
  rows?: readonly BandRow[],
): readonly Reading[] {
  return measurements.map((measurement) => read(measurement, bandFor(measurement.key, setting, rows)));
}
