import { type Point, type Position, points, positions } from './marks.ts';
import type { Place } from './place.ts';

/** A table over all places, made once: a swing asks for the same ones again and again. */
export function byPlace<T>(make: (place: Place) => T): (place: Place) => T {
  const rows = new Map<Position, ReadonlyMap<Point, T>>(
    positions.map((position) => [
      position,
      new Map(points.map((point) => [point, make({ position, point })])),
    ]),
  );
  return (place) => {
    const found = rows.get(place.position)?.get(place.point);
    return found ?? make(place);
  };
}
