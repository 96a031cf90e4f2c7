import type { MeasurementName } from './measurement-name.ts';
import { namesDownTheLine } from './names-down-the-line.ts';
import { namesFaceOn } from './names-face-on.ts';

const names = { ...namesFaceOn, ...namesDownTheLine };

export type MeasurementKey = keyof typeof names;

/** Every measurement this package can make, by key, in the order of the swing: face-on first, then down-the-line. */
export const measurementNames: Readonly<Record<MeasurementKey, MeasurementName>> = names;

export const measurementKeys = Object.keys(names) as readonly MeasurementKey[];

export function isMeasurementKey(key: string): key is MeasurementKey {
  return Object.hasOwn(names, key);
}
