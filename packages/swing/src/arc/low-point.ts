import type { Mark, Picture, Setting } from '../marks/marks.ts';
import type { Measurement, Refusal } from '../measurement.ts';
import type { ClubheadPixel } from './clubhead-track.ts';
import { type ArcNotRead, type ArcReading, readArc } from './read-arc.ts';

const key = 'low-point-ahead-of-ball';

/**
 * The lowest point of an arc as a measurement.
 *
 * @returns mm, + towards the target; `uStatistical` leaves out what the level of the stick adds
 */
export function lowPointOf(arc: ArcReading | ArcNotRead): Measurement | Refusal {
  if ('why' in arc) return { key, ...arc };
  const { lowPointMm: value, uOwnMm: uStatistical, uTiltMm } = arc;
  const u = Math.hypot(uStatistical, uTiltMm);
  return { key, unit: 'mm', value, u, uStatistical, proxy: false, positions: ['impact'] };
}

/**
 * The lowest point of the clubhead's arc, ahead of the ball, from the clubhead on frames near it; or why it is not told.
 *
 * @throws MarkOutsideError (a RangeError) when the clubhead is marked outside the picture
 */
export const measureLowPoint = (
  trail: readonly ClubheadPixel[],
  marks: readonly Mark[],
  picture: Picture,
  setting: Setting,
): Measurement | Refusal => lowPointOf(readArc(trail, marks, picture, setting));
