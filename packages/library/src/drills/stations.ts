import { type Place, places, type RungId, type Station, type StationObject } from '../types.ts';
import { ballAtOrigin, feet } from './feet.ts';

type There = {
  readonly needs?: readonly string[];
  readonly objects?: readonly StationObject[];
  readonly steps?: readonly string[];
  readonly lastRung?: RungId | null;
};
type Everywhere = {
  readonly needs?: readonly string[];
  readonly objects?: readonly StationObject[];
  readonly feet?: Parameters<typeof feet>[0];
  readonly steps: readonly string[];
  /** What differs at one place; its steps come first. */
  readonly at?: Readonly<Partial<Record<Place, There>>>;
};

const things: Readonly<Record<Place, readonly string[]>> = {
  grass: ['club', 'balls'],
  mat: ['club', 'balls'],
  home: ['club', 'rug'],
};
const rug = 'Lay a rug that does not slip; no ball is struck here.';
const last: Readonly<Partial<Record<Place, RungId>>> = { mat: 'hip-high', home: 'brush' };

/** Mat, grass and home: no longer than hip-high on a firm mat, no ball at home, thirty swings at most on either. */
export const stations = ({
  needs = [],
  objects = [],
  feet: stance,
  steps,
  at = {},
}: Everywhere): readonly Station[] =>
  places.map((place) => {
    const there = at[place] ?? {};
    const lastRung = there.lastRung === undefined ? last[place] : there.lastRung;
    return {
      place,
      needs: [...new Set([...things[place], ...(there.needs ?? needs)])],
      objects: [...(place === 'home' ? [] : [ballAtOrigin]), ...(there.objects ?? objects), ...feet(stance)],
      steps: [...(place === 'home' ? [rug] : []), ...(there.steps ?? []), ...steps],
      ...(lastRung === undefined || lastRung === null ? {} : { lastRung }),
      ...(place === 'grass' ? {} : { ballsAtMost: 30 }),
    };
  });
