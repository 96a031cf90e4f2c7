import type { Picture, Point, View } from '../marks/marks.ts';
import type { Place } from '../marks/place.ts';
import type { PlacedMark, PlacedMarks } from '../marks/placed-marks.ts';

/** A pair of marks at address that shows the club, and how much of its length lies outside them. */
export type ClubPair = {
  readonly endPoint: Point;
  readonly footPoint: Point;
  readonly notSeenMm: number;
  readonly uNotSeenMm: number;
};

const pair = (endPoint: Point, footPoint: Point, notSeenMm: number, uNotSeenMm: number): ClubPair => ({
  endPoint,
  footPoint,
  notSeenMm,
  uNotSeenMm,
});

/**
 * Pairs that can carry the scale, the best first. From behind the ball hides behind the clubhead and stands for it; the
 * middle of the hands lies about 110 mm down the grip. Common practice, no source.
 */
export const clubPairs: Readonly<Record<View, readonly ClubPair[]>> = {
  'face-on': [pair('grip-end', 'ball', 0, 0)],
  'down-the-line': [
    pair('grip-end', 'clubhead', 15, 10),
    pair('grip-end', 'ball', 10, 20),
    pair('hands', 'clubhead', 125, 20),
    pair('hands', 'ball', 120, 28),
  ],
};

/** Least rise of the upper mark over the lower that can carry a scale, as a share of the picture's long side. */
const leastRise = 0.05;

export const atAddress = (point: Point): Place => ({ position: 'address', point });

export type ClubInPicture = ClubPair & { readonly end: PlacedMark; readonly foot: PlacedMark };

/** The club at address as these marks show it, by the best pair that is marked; null when none can carry a scale. */
export function clubInPicture(marks: PlacedMarks, picture: Picture, view: View): ClubInPicture | null {
  const least = leastRise * Math.max(picture.widthPx, picture.heightPx);
  for (const one of clubPairs[view]) {
    const end = marks.at(atAddress(one.endPoint));
    const foot = marks.at(atAddress(one.footPoint));
    if (end !== undefined && foot !== undefined && end.upPx - foot.upPx >= least)
      return { ...one, end, foot };
  }
  return null;
}
