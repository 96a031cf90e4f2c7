import { wayOf } from '@ballfirst/library/phrases/ways';
import { amountOf, type StudentUnits, type Told } from './amount-of.ts';

/**
 * The band of a reading in words for a student, with the side each edge lies on; null where there is none.
 *
 * @throws RangeError on an edge that is no number
 * @example bandWords({ key: 'hip-shift-address-top', unit: 'mm', value: 0, band: { low: -30, high: 30 } }, 'metric')
 * // 'between 3 cm away from the target and 3 cm towards the target'
 */
export const bandWords = (told: Told, units: StudentUnits): string | null => {
  const { key, band } = told;
  const way = wayOf(key);
  if (band === null || band === undefined || way === undefined) return null;
  const { low, high } = band;
  const side = (edge: number): string => (edge < 0 ? way.negative : way.positive);
  const amount = (edge: number): string => amountOf({ ...told, value: edge }, units);
  const edge = (value: number): string => `${amount(value)} ${side(value)}`.trim();
  if (low === null) return high === null ? null : `up to ${edge(high)}`;
  if (high === null) return low === 0 ? way.positive : `at least ${edge(low)}`;
  if (low === 0) return `up to ${edge(high)}`;
  if (high === 0) return `up to ${edge(low)}`;
  if (side(low) === side(high)) {
    const [near, far] = Math.abs(low) < Math.abs(high) ? [low, high] : [high, low];
    return `between ${amount(near)} and ${edge(far)}`;
  }
  return `between ${edge(low)} and ${edge(high)}`;
};
