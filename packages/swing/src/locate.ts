import { clothingDoubtMm } from './clothing-doubt.ts';
import type { Coordinate, OwnEffect } from './coordinate.ts';
import { depthOf } from './depth.ts';
import type { View } from './marks.ts';
import type { Place } from './place.ts';
import type { PlacedMark } from './placed-marks.ts';
import type { Felt, Sight } from './sight.ts';

export type Seen = {
  readonly sight: Sight;
  readonly view: View;
  readonly place: Place;
  readonly mark: PlacedMark;
};

type Weighed = readonly [felt: Felt, slope: number];

/** Joins what each part does to the coordinate; a click that the sight knows too is counted there. */
function join(sight: Sight, value: number, parts: readonly Weighed[], own: readonly OwnEffect[]): Coordinate {
  const shared = new Float64Array(sight.inputs.length);
  for (const [{ effects }, slope] of parts) {
    for (let i = 0; i < shared.length; i += 1) shared[i] = (shared[i] ?? 0) + slope * (effects[i] ?? 0);
  }
  const apart = own.filter(({ name, effect }) => {
    const index = name.startsWith('address') ? sight.indexOf(name) : undefined;
    if (index !== undefined) shared[index] = (shared[index] ?? 0) + effect;
    return index === undefined && effect !== 0;
  });
  return { value, shared, own: apart };
}

/** How far a point lies from the lens: each at its own depth, so that the nearer ball is not read as if among the ankles. */
function awayOf({ sight, view, place }: Seen, slope: number) {
  const { name, from, mm, u } = depthOf(view, place);
  const base = sight.base[from];
  const parts: Weighed[] = [
    [sight.distanceMm, slope],
    [base, slope],
  ];
  const own: OwnEffect = { name: `${name}/depth`, effect: slope * u, clicked: false };
  // The first order misses that an unknown turn carries an unknown depth aside: JCGM 100:2008, 5.1.2 note.
  const turned: OwnEffect = {
    name: `${name}/depth-by-yaw`,
    effect: u * sight.uYawRad,
    clicked: false,
  };
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
  const name = `${place.position}/${place.point}`;
  return join(
    sight,
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
      { name: `${name}/level`, effect: perPx * cos * mark.uPx, clicked: true },
      { name: `${place.point}/level-habit`, effect: perPx * cos * mark.uHabitPx, clicked: true },
      { name: `${name}/clothing`, effect: clothingDoubtMm(place.point), clicked: false, family: place.point },
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
  const { sight, place, mark } = seen;
  const { focalPx, rollRad, yawRad } = sight;
  const cos = Math.cos(rollRad.value);
  const sin = Math.sin(rollRad.value);
  const slope = (mark.upPx * cos - mark.levelPx * sin) / focalPx.value;
  const away = awayOf(seen, slope);
  const aside = (away.mm * (mark.levelPx * cos + mark.upPx * sin)) / focalPx.value;
  const mm = away.mm + aside * Math.tan(yawRad.value);
  const perPx = mm / focalPx.value;
  return join(
    sight,
    mm * slope,
    [
      ...away.parts,
      [yawRad, aside * slope],
      [rollRad, -perPx * (mark.upPx * sin + mark.levelPx * cos)],
      [focalPx, -perPx * slope],
    ],
    [
      away.own,
      { name: `${place.position}/${place.point}/up`, effect: perPx * cos * mark.uPx, clicked: true },
      { name: `${place.point}/up-habit`, effect: perPx * cos * mark.uHabitPx, clicked: true },
    ],
  );
}
