import { definitions } from './definitions.ts';
import { measurementNames } from './measurement-names.ts';
import type { Place } from './place.ts';
import { placesOf } from './places-of.ts';

const scalePlaces: readonly Place[] = [
  { position: 'address', point: 'ball' },
  { position: 'address', point: 'grip-end' },
];

const named = ({ position, point }: Place) => `${position}/${point}`;

/**
 * The marks still to be placed before a measurement can be made, by the definition that needs fewest.
 *
 * @param key - a measurement key; an unknown one needs nothing we could ask for
 * @returns null when no definition has this key; empty when all its marks are there
 */
export function placesForKey(key: string, marked: readonly Place[]): readonly Place[] | null {
  const there = new Set(marked.map(named));
  let fewest: readonly Place[] | null = null;
  for (const definition of definitions) {
    if (definition.key !== key) continue;
    const scale = measurementNames[definition.key].unit === 'mm' ? scalePlaces : [];
    const wanted = new Map([...scale, ...placesOf(definition)].map((place) => [named(place), place]));
    const missing = [...wanted].filter(([name]) => !there.has(name)).map(([, place]) => place);
    if (fewest === null || missing.length < fewest.length) fewest = missing;
  }
  return fewest;
}
