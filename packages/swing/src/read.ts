import { normalCdf } from '@ballfirst/numbers/normal-cdf';
import type { Band, Measurement, Reading } from './measurement.ts';

/** P(true value < edge): a step where there is no doubt. */
const below = (edge: number, value: number, u: number): number => {
  if (u > 0) return normalCdf((edge - value) / u);
  return value < edge ? 1 : 0;
};

/**
 * A measurement read against its band.
 *
 * @param band - null when the library has none; an absent edge is open
 * @returns how sure we are that the true value lies past each edge, 0..1
 * @throws RangeError when the edges of the band are crossed
 * @example read(hipShift, { low: -30, high: null, label: 'common practice' }).probabilityBelow
 */
export function read(measurement: Measurement, band: Band | null): Reading {
  const low = band?.low ?? null;
  const high = band?.high ?? null;
  if (low !== null && high !== null && low > high) throw new RangeError('The edges of the band are crossed.');
  const { key, unit, value, u, uStatistical, proxy, positions, felt, interval } = measurement;
  // Field by field: copying an object of any shape takes ten times as long.
  return {
    key,
    unit,
    value,
    u,
    uStatistical,
    proxy,
    positions,
    ...(felt === undefined ? {} : { felt }),
    ...(interval === undefined ? {} : { interval }),
    band,
    probabilityBelow: low === null ? 0 : below(low, value, u),
    probabilityAbove: high === null ? 0 : 1 - below(high, value, u),
  };
}
