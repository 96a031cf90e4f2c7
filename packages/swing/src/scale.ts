import { depthOf } from './depth.ts';
import type { Setting } from './marks.ts';
import type { SeenSwing } from './seen-swing.ts';

/** Millimetres a pixel where the player stands, with its standard uncertainty, and what length it was taken from. */
export type Scale = {
  readonly from: 'club-at-address';
  readonly mmPerPx: number;
  readonly u: number;
};

/** Where the scale is told: at the ankles face-on, at the hands from behind. */
const standing = { 'face-on': 'lead-ankle', 'down-the-line': 'hands' } as const;

/**
 * The scale of a picture from the club at address: about 6 % doubt face-on, most of it in the length of the club and
 * the angle at which it is held; about 4 % from behind, where the club stands in the plane of the picture.
 *
 * @returns null when no pair of marks at address shows the club
 * @source pinhole geometry of `focal-from-club.ts` and `focal-from-club-behind.ts`; the club's length and lie are common
 * practice, no source
 */
export function scaleOf({ sight }: SeenSwing, { view }: Setting): Scale | null {
  if (!sight.fromClub) return null;
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
  return { from: 'club-at-address', mmPerPx, u };
}
