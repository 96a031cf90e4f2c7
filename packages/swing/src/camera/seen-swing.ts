import { type ErrorSources, errorSources } from '../doubt/error-sources.ts';
import type { Picture, Setting } from '../marks/marks.ts';
import { notMarked } from '../marks/missing-words.ts';
import type { Place } from '../marks/place.ts';
import type { PlacedMark, PlacedMarks } from '../marks/placed-marks.ts';
import type { Coordinate } from './coordinate.ts';
import { levelOf, upOf } from './locate.ts';
import { type Sight, sightOf } from './sight.ts';

/** The marks of a swing as places in mm, each computed once. */
export type SeenSwing = {
  readonly sight: Sight;
  readonly sources: ErrorSources;
  /** @throws RangeError when the place is not marked */
  level(place: Place): Coordinate;
  up(place: Place): Coordinate;
  /** Height of one place over another in the picture, as a share of the picture's height. */
  rowsBetween(over: Place, under: Place): number;
};

export function seeSwing(marks: PlacedMarks, picture: Picture, setting: Setting): SeenSwing {
  const sight = sightOf(marks, picture, setting);
  const sources = errorSources(sight.inputs);
  const once = (make: typeof levelOf) => {
    const made = new Map<PlacedMark, Coordinate>();
    return (place: Place): Coordinate => {
      const mark = marks.at(place);
      if (mark === undefined) throw new RangeError(`${notMarked(place)}.`);
      const known = made.get(mark);
      if (known !== undefined) return known;
      const coordinate = make({ sight, sources, view: setting.view, place, mark });
      made.set(mark, coordinate);
      return coordinate;
    };
  };
  const rowsBetween = (over: Place, under: Place): number =>
    ((marks.at(over)?.upPx ?? Number.NaN) - (marks.at(under)?.upPx ?? Number.NaN)) / picture.heightPx;
  return { sight, sources, level: once(levelOf), up: once(upOf), rowsBetween };
}
