import { propagate } from '@ballfirst/numbers/propagate';
import type { Sight } from '../camera/sight.ts';
import { stickEnds } from '../camera/stick-tilt.ts';
import type { Setting } from '../marks/marks.ts';
import { notMarked } from '../marks/missing-words.ts';
import type { Place } from '../marks/place.ts';
import type { PlacedMarks } from '../marks/placed-marks.ts';
import type { Measurement, Refusal } from '../measurement.ts';
import { refuse } from '../refuse.ts';

const key = 'toe-line-to-target-stick';
const toes = {
  trail: { position: 'address', point: 'trail-toe' },
  lead: { position: 'address', point: 'lead-toe' },
} as const satisfies Record<string, Place>;

/** What the line of the toes is read from. Without the stick nothing says where the target is. */
export const toeLinePlaces: readonly Place[] = [stickEnds.near, stickEnds.ahead, toes.trail, toes.lead];

/** A phone that is aimed at the player looks up or down by so much, 1 SD. Common practice, no source. */
const uPitchDeg = 2;
/** What a shoe hides of its tip, 1 SD, in pixels of the foot's own length of 300: common practice, no source. */
const shoeShare = 0.02;
/** Above this doubt the line of the toes says nothing of an aim. Common practice, no source. */
const mostDeg = 6;
const degrees = (radians: number) => (radians * 180) / Math.PI;

type Ground = { readonly aside: number; readonly away: number };
type Lens = { readonly focalPx: number; readonly rollRad: number; readonly horizonPx: number };

/**
 * Where a point of the ground lies, in heights of the lens: aside, + away from the ball line, and away from the camera.
 *
 * @source pinhole geometry: of a level lens the ground rises in the picture as its height over the distance
 */
function onGround(levelPx: number, upPx: number, { focalPx, rollRad, horizonPx }: Lens): Ground {
  const level = levelPx * Math.cos(rollRad) + upPx * Math.sin(rollRad);
  const below = horizonPx - (upPx * Math.cos(rollRad) - levelPx * Math.sin(rollRad));
  if (!(below > 0)) throw new RangeError('A mark on the ground does not lie below the lens.');
  return { aside: level / below, away: focalPx / below };
}

const bearing = (near: Ground, far: Ground): number => {
  if (!(far.away > near.away)) throw new RangeError('The end near the target does not lie farther away.');
  return degrees(Math.atan2(far.aside - near.aside, far.away - near.away));
};

/** Both lines on the ground, the stick's taken from that of the toes: yaw falls out. */
const between = (at: readonly number[]): number => {
  const [focalPx = 0, rollRad = 0, horizonPx = 0, ...pixels] = at;
  const spot = (i: number) =>
    onGround(pixels[2 * i] ?? Number.NaN, pixels[2 * i + 1] ?? Number.NaN, { focalPx, rollRad, horizonPx });
  return bearing(spot(2), spot(3)) - bearing(spot(0), spot(1));
};

/**
 * The line of the toes against a stick on the target line, seen from behind.
 *
 * @param sight - for focal length and roll; how high the lens stands falls out
 * @returns degrees, + open (the toes point to the player's side of the target); a refusal without the stick
 * @source pinhole geometry, doubt by the law of propagation (JCGM 100:2008, equation 13); reference test beside planted feet
 */
export function measureToeLine(
  placed: PlacedMarks,
  sight: Sight,
  { view }: Pick<Setting, 'view'>,
): Measurement | Refusal {
  if (view !== 'down-the-line') return refuse(key, 'wrong-view', `a ${view} picture does not show it`);
  const bare = toeLinePlaces.filter((place) => placed.at(place) === undefined);
  if (bare.length > 0) return refuse(key, 'marks-missing', bare.map(notMarked).join(', '));
  const marks = toeLinePlaces.map((place) => placed.at(place)).filter((mark) => mark !== undefined);
  const { value: focalPx, effects } = sight.focalPx;
  const uFocal = Math.hypot(...effects);
  const x = [focalPx, sight.rollRad.value, 0, ...marks.flatMap(({ levelPx, upPx }) => [levelPx, upPx])];
  const shoePx = (index: number) => (index < 2 ? 0 : (shoeShare * focalPx * 300) / 3600);
  const clicks = marks.flatMap(({ uPx }, index) => {
    const u = Math.hypot(uPx, shoePx(index));
    return [u, u];
  });
  const doubt = (lens: readonly number[]) => {
    const us = [...lens, ...clicks];
    return propagate(
      between,
      x,
      us.map((u, i) => us.map((_, j) => (i === j ? u ** 2 : 0))),
    );
  };
  try {
    const uHorizon = focalPx * Math.tan((uPitchDeg * Math.PI) / 180);
    const { value, u } = doubt([uFocal, Math.hypot(...sight.rollRad.effects), uHorizon]);
    if (!(u <= mostDeg)) return refuse(key, 'doubt-too-large', 'the doubt is larger than what it could tell');
    const uStatistical = doubt([0, 0, 0]).u;
    return { key, unit: 'deg', value, u, uStatistical, proxy: false, positions: ['address'] };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return refuse(
      key,
      'doubt-too-large',
      'toes and stick do not lie on the ground below the lens, one end farther away',
    );
  }
}
