import { type Position, positions } from '@ballfirst/swing/marks/marks';
import type { Place } from '@ballfirst/swing/marks/place';
import type { Mark } from './marking.ts';

const at = (position: Position): number => positions.indexOf(position);

/**
 * Where the aim of the keyboard begins: where the same point was at the moment nearest to this one, else where the last
 * mark was placed, else in the middle of what is shown.
 */
export const aimAt = (
  marks: readonly Mark[],
  place: Place,
  last: { readonly x: number; readonly y: number } | null,
  middle: { readonly x: number; readonly y: number },
): { x: number; y: number } => {
  const near = marks
    .filter((mark) => mark.point === place.point)
    .sort(
      (a, b) => Math.abs(at(a.position) - at(place.position)) - Math.abs(at(b.position) - at(place.position)),
    )[0];
  const { x, y } = near ?? last ?? middle;
  return { x, y };
};
