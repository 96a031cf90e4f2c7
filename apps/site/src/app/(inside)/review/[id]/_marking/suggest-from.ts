import type { Place } from '@ballfirst/swing/marks/place';
import { frameAt } from '../../../../../frames/frame-table.ts';
import { type Timed, tiesBetween, timeBeside } from '../_compare/tie-frames.ts';
import { frameOfMoment, type Mark, markAt } from './marking.ts';

type Size = { readonly widthPx: number; readonly heightPx: number };
/** A swing whose marks are known: the one on the desk, or the last one of this student from the same side. */
export type Marked = Timed & { readonly size: Size };

/** Further closer or farther than this, the phone stood elsewhere and the old marks say nothing. Common practice. */
const mostScale = 2;
/** Points nearer to each other than this share of the picture give no scale. */
const leastSpread = 0.02;

type Spot = { readonly x: number; readonly y: number };
const meanOf = (spots: readonly Spot[]): Spot => ({
  x: spots.reduce((sum, { x }) => sum + x, 0) / spots.length,
  y: spots.reduce((sum, { y }) => sum + y, 0) / spots.length,
});
const spreadOf = (spots: readonly Spot[], mean: Spot): number =>
  Math.sqrt(spots.reduce((sum, { x, y }) => sum + (x - mean.x) ** 2 + (y - mean.y) ** 2, 0) / spots.length);

/**
 * How places of the last swing lie in this picture: moved and enlarged as the points marked at address in both say, else
 * by the size of the pictures alone. Null: too unlike.
 */
export const placing = (here: Marked, last: Marked): ((at: Spot) => Spot) | null => {
  const pairs = here.marks.flatMap((mark) => {
    const old = mark.position === 'address' ? markAt(last.marks, mark) : undefined;
    return old === undefined ? [] : [{ now: mark, old }];
  });
  const bySize = here.size.heightPx / last.size.heightPx;
  if (pairs.length === 0) {
    const across = here.size.widthPx / last.size.widthPx;
    return ({ x, y }) => ({ x: x * across, y: y * bySize });
  }
  const [now, old] = [meanOf(pairs.map((it) => it.now)), meanOf(pairs.map((it) => it.old))];
  const [wide, was] = [
    spreadOf(
      pairs.map((it) => it.now),
      now,
    ),
    spreadOf(
      pairs.map((it) => it.old),
      old,
    ),
  ];
  const measured = was > leastSpread * last.size.heightPx && wide > leastSpread * here.size.heightPx;
  const scale = measured ? wide / was : bySize;
  if (scale / bySize > mostScale || bySize / scale > mostScale) return null;
  return ({ x, y }) => ({ x: now.x + (x - old.x) * scale, y: now.y + (y - old.y) * scale });
};

/** The frame of a moment: marked, else where it lay in the last swing, tied by the moments that both have. */
export const frameFrom = (here: Marked, last: Marked, moment: Mark['position']): number | null => {
  const marked = frameOfMoment(here.marks, moment);
  if (marked !== null) return marked;
  const old = frameOfMoment(last.marks, moment);
  const timeS = old === null ? undefined : last.timesS[old];
  const ties = tiesBetween(last, here);
  if (timeS === undefined || ties.length === 0 || here.timesS.length === 0) return null;
  return frameAt(here.timesS, timeBeside(timeS, ties) + 1e-9);
};

/** Where the points of the last swing lie in this one, hollow until they are dragged or confirmed. */
export const suggestFrom = (here: Marked, last: Marked | null, places: readonly Place[]): readonly Mark[] => {
  const put = last === null ? null : placing(here, last);
  if (last === null || put === null) return [];
  return places.flatMap((place) => {
    const old = markAt(last.marks, place);
    const frame = frameFrom(here, last, place.position);
    if (old === undefined || frame === null || markAt(here.marks, place) !== undefined) return [];
    const { x, y } = put(old);
    if (x < 0 || y < 0 || x >= here.size.widthPx || y >= here.size.heightPx) return [];
    const tenth = (value: number) => Math.round(value * 10) / 10;
    return [{ ...place, frame, x: tenth(x), y: tenth(y), source: 'suggested' as const }];
  });
};
