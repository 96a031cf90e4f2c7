import { clothingCorrelation, clothingDoubtMm } from '../doubt/clothing-doubt.ts';
import type { ErrorSources } from '../doubt/error-sources.ts';
import { byPlace } from '../marks/by-place.ts';
import type { View } from '../marks/marks.ts';
import type { Place } from '../marks/place.ts';
import type { PlacedMark } from '../marks/placed-marks.ts';
import type { Coordinate } from './coordinate.ts';
import { depthOf } from './depth.ts';
import type { Felt, Sight } from './sight.ts';

export type Seen = {
  readonly sight: Sight;
  readonly sources: ErrorSources;
  readonly view: View;
  readonly place: Place;
  readonly mark: PlacedMark;
};

/** What the sources of a place are called; clicks as the sight calls them. */
const namesOf = byPlace(({ position, point }) => ({
  level: `${position}/${point}/level`,
  up: `${position}/${point}/up`,
  clothing: `${position}/${point}/clothing`,
  levelHabit: `${point}/level-habit`,
  upHabit: `${point}/up-habit`,
  shirt: `${point}/clothing`,
}));

type Weighed = readonly [felt: Felt, slope: number];

type Own = readonly [name: string, effect: number, clicked: boolean];

/** Joins what each part does to the coordinate; a click that the sight knows too is the same source. */
function join(
  { sight, sources: all }: Seen,
  value: number,
  parts: readonly Weighed[],
  own: readonly Own[],
): Coordinate {
  // A swing asks for a hundred coordinates: the lists are filled in place.
  const known = sight.inputs.length;
  const sources: number[] = new Array<number>(known);
  const effects: number[] = new Array<number>(known).fill(0);
  for (let i = 0; i < known; i += 1) sources[i] = i;
  for (const [felt, slope] of parts) {
    for (let i = 0; i < known; i += 1) effects[i] = (effects[i] ?? 0) + slope * (felt.effects[i] ?? 0);
  }
  for (const [name, effect, clicked] of own) {
    if (effect === 0) continue;
    const source = all.of(name, clicked);
    if (source < known) effects[source] = (effects[source] ?? 0) + effect;
    else {
      sources.push(source);
      effects.push(effect);
    }
  }
  return { value, sources, effects };
}

/** How far a point lies from the lens: each at its own depth, so that the nearer ball is not read as if among the ankles. */
function awayOf({ sight, view, place }: Seen, slope: number) {
  const { source, sourceByYaw, from, mm, u } = depthOf(view, place);
  const base = sight.base[from];
  const parts: Weighed[] = [
    [sight.distanceMm, slope],
    [base, slope],
  ];
  const own: Own = [source, slope * u, false];
  // The first order misses that an unknown turn carries an unknown depth aside: JCGM 100:2008, 5.1.2 note.
  const turned: Own = [sourceByYaw, u * sight.uYawRad, false];
  return { mm: sight.distanceMm.value + base.value + mm, parts, own, turned };
}

/**
 * The level coordinate of a mark.
 *
 * @source pinhole geometry, derived here: level = (D + Z) tan(yaw + atan(px / f)), px turned back by the roll
 */
export function levelOf(seen: Seen): Coordinate {
  const { sight, place, mark } = seen;
  const { focalPx, yawRad, rollRad } = sight;
  const cos = Math.cos(rollRad.value);
  const sin = Math.sin(rollRad.value);
  const upright = mark.levelPx * cos + mark.upPx * sin;
  const slope = upright / focalPx.value;
  const tan = Math.tan(yawRad.value + Math.atan(slope));
  const away = awayOf(seen, tan);
  const perYaw = away.mm * (1 + tan * tan);
  const perPx = perYaw / (focalPx.value * (1 + slope * slope));
  const names = namesOf(place);
  // The same shirt hides the same edge at every moment, in part.
  const worn = clothingDoubtMm(place.point);
  return join(
    seen,
    away.mm * tan,
    [
      ...away.parts,
      [yawRad, perYaw],
      [rollRad, perPx * (mark.upPx * cos - mark.levelPx * sin)],
      [focalPx, -perPx * slope],
    ],
    [
      away.own,
      away.turned,
      [names.level, perPx * cos * mark.uPx, true],
      [names.levelHabit, perPx * cos * mark.uHabitPx, true],
      [names.shirt, worn * Math.sqrt(clothingCorrelation), false],
      [names.clothing, worn * Math.sqrt(1 - clothingCorrelation), false],
    ],
  );
}

/**
 * The upward coordinate of a mark.
 *
 * @source pinhole geometry, derived here: up = (D + Z + level tan(yaw)) px / f, px turned back by the roll: a camera that
 * is turned has one side of the picture farther away
 */
export function upOf(seen: Seen): Coordinate {
  const names = namesOf(seen.place);
  const { sight, mark } = seen;
  const { focalPx, rollRad, yawRad } = sight;
  const cos = Math.cos(rollRad.value);
  const sin = Math.sin(rollRad.value);
  const slope = (mark.upPx * cos - mark.levelPx * sin) / focalPx.value;
  const away = awayOf(seen, slope);
  const aside = (away.mm * (mark.levelPx * cos + mark.upPx * sin)) / focalPx.value;
  const mm = away.mm + aside * Math.tan(yawRad.value);
  const perPx = mm / focalPx.value;
  return join(
    seen,
    mm * slope,
    [
      ...away.parts,
      [yawRad, aside * slope],
      [rollRad, -perPx * (mark.upPx * sin + mark.levelPx * cos)],
      [focalPx, -perPx * slope],
    ],
    [away.own, [names.up, perPx * cos * mark.uPx, true], [names.upHabit, perPx * cos * mark.uHabitPx, true]],
  );
}
