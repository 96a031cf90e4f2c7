import type { ClubheadPixel } from '@ballfirst/swing/arc/clubhead-track';
import { measureLowPoint } from '@ballfirst/swing/arc/low-point';
import type { Picture, Setting } from '@ballfirst/swing/marks/marks';
import type { Mark } from '../_marking/marking.ts';

export type TrailReading =
  | { readonly kind: 'low-point'; readonly aheadMm: number; readonly uMm: number }
  | { readonly kind: 'refused'; readonly words: string };

/** What the clubhead near the ball says of the lowest point of its arc, or why it says nothing. */
export const readTrail = (
  trail: readonly ClubheadPixel[],
  marks: readonly Mark[],
  picture: Picture,
  setting: Setting,
): TrailReading => {
  const made = measureLowPoint(trail, marks, picture, setting);
  if ('why' in made) return { kind: 'refused', words: made.words };
  return { kind: 'low-point', aheadMm: made.value, uMm: made.u };
};
