import type { Setting } from '../marks/marks.ts';
import { depthOf } from './depth.ts';
import type { ScaleFrom, Sight } from './sight.ts';

/** Millimetres a pixel where the player stands, with its standard uncertainty, and what length it was taken from. */
export type Scale = {
  readonly from: ScaleFrom;
  readonly mmPerPx: number;
  readonly u: number;
};

/** Where the scale is told: at the ankles face-on, at the hands from behind. */
const standing = { 'face-on': 'lead-ankle', 'down-the-line': 'hands' } as const;

/**
 * The scale of a picture, from a stick on the target line (2 %) or the club at address: about 6 % doubt face-on, most of it in the length of the club and
 * the angle at which it is held; about 4 % from behind, where the club stands in the plane of the picture.
 *
 * @returns null when neither is marked; the ball alone is too small: a pixel at its edge is 8 %
 * @source pinhole geometry of `focal-from-club.ts` and `focal-from-club-behind.ts`; the club's length and lie are common
 * practice, no source
 */
export function scaleOf(sight: Sight, { view }: Setting): Scale | null {
  if (sight.scaleFrom === null) return null;
  const { from, mm } = depthOf(view, { position: 'address', point: standing[view] });
  const { distanceMm, focalPx, base } = sight;
  const away = distanceMm.value + base[from].value + mm;
  const mmPerPx = away / focalPx.value;
  const u = Math.hypot(
    ...distanceMm.effects.map(
      (effect, i) =>
        (effect + (base[from].effects[i] ?? 0) - mmPerPx * (focalPx.effects[i] ?? 0)) / focalPx.value,
    ),
  );
  return { from: sight.scaleFrom, mmPerPx, u };
}
