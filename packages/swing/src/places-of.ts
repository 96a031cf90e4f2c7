import type { Definition } from './definition.ts';
import type { Place } from './place.ts';

export const ankles = {
  lead: { position: 'address', point: 'lead-ankle' },
  trail: { position: 'address', point: 'trail-ankle' },
} as const satisfies Record<string, Place>;

/** The marks a definition needs, not counting those that give the scale. */
export function placesOf(definition: Definition): readonly Place[] {
  return definition.perAnkles ? [...definition.places, ankles.lead, ankles.trail] : definition.places;
}
