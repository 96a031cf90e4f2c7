import type { Definition } from './definition.ts';
import type { SwingLength } from './marks.ts';
import { placesOf } from './places-of.ts';

const onlyInLongSwings = new Set(['lead-arm-parallel-back', 'top', 'lead-arm-parallel-down']);

/** Whether a swing of this length has no such moment: below three-quarter there is no top. */
export function lacksMoment(definition: Definition, swingLength: SwingLength): boolean {
  if (swingLength === 'three-quarter' || swingLength === 'full') return false;
  return placesOf(definition).some(({ position }) => onlyInLongSwings.has(position));
}
