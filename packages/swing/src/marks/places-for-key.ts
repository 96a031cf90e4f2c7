import { atAddress, clubPairs } from '../camera/club-in-picture.ts';
import type { Definition } from '../definitions/definition.ts';
import { definitions } from '../definitions/definitions.ts';
import { measurementNames } from '../definitions/measurement-names.ts';
import { toeLinePlaces } from '../definitions/toe-line.ts';
import { tempoPositions } from '../tempo.ts';
import { positions, type View } from './marks.ts';
import type { Place } from './place.ts';

const named = ({ position, point }: Place) => `${position}/${point}`;

/** The ways to give millimetres a scale; none is needed for angles and shares. */
const scalesOf = ({ key, view }: Definition): readonly (readonly Place[])[] =>
  measurementNames[key].unit === 'mm'
    ? clubPairs[view].map(({ endPoint, footPoint }) => [atAddress(footPoint), atAddress(endPoint)])
    : [[]];

const bySwing = (a: Place, b: Place) => positions.indexOf(a.position) - positions.indexOf(b.position);

/** The tempo asks for any mark at its moments; the head is one that other measurements can use too. */
const forTempo = (marked: readonly Place[]): readonly Place[] =>
  tempoPositions
    .filter((position) => !marked.some((place) => place.position === position))
    .map((position) => ({ position, point: 'head-centre' }));

/** The toes; nobody is asked to mark a stick that may not lie there. */
const forToeLine = (marked: readonly Place[]): readonly Place[] | null => {
  const there = new Set(marked.map(named));
  const missing = toeLinePlaces.filter((place) => !there.has(named(place)));
  return missing.some(({ point }) => point.startsWith('target-stick')) ? null : missing;
};

/**
 * The marks still to be placed before a measurement can be made, by the definition and scale that need fewest.
 *
 * @param key - a measurement key; an unknown one needs nothing we could ask for
 * @param marked - what is marked already
 * @param view - the view of the clip
 * @returns null when no definition of this view has this key; empty when all its marks are there; in the order of the swing
 */
export function placesForKey(
  key: string,
  marked: readonly Place[],
  view: View = 'face-on',
): readonly Place[] | null {
  if (key === 'tempo-ratio') return forTempo(marked);
  if (key === 'toe-line-to-target-stick') return view === 'down-the-line' ? forToeLine(marked) : null;
  const there = new Set(marked.map(named));
  let fewest: readonly Place[] | null = null;
  for (const definition of definitions) {
    if (definition.key !== key || definition.view !== view) continue;
    for (const scale of scalesOf(definition)) {
      const wanted = new Map([...scale, ...definition.needed].map((place) => [named(place), place]));
      const missing = [...wanted].filter(([name]) => !there.has(name)).map(([, place]) => place);
      if (fewest === null || missing.length < fewest.length) fewest = missing;
    }
  }
  return fewest?.toSorted(bySwing) ?? null;
}
