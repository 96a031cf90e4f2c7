import { clickDoubt } from '@ballfirst/swing/doubt/click-doubt';
import { type Mark, markAt } from './marking.ts';

type Size = { readonly widthPx: number; readonly heightPx: number };
export type OwnDoubt = {
  readonly marks: number;
  /** Standard deviation of one click each way, in pixels of this picture. */
  readonly px: number;
  /** What the measurements take it for. */
  readonly assumedPx: number;
  /** The largest difference of one mark, and which. */
  readonly widest: Mark;
  readonly widestPx: number;
};

/** Fewer pairs say nothing of a hand. */
const leastPairs = 3;

/**
 * The doubt of one's own clicks from marks that were placed twice without seeing the first.
 *
 * @returns null for fewer than three pairs
 * @source two clicks of variance s^2 each way differ by 2 s^2 each way (law of propagation): s^2 = sum(dx^2 + dy^2) / 4n
 */
export const ownDoubt = (first: readonly Mark[], second: readonly Mark[], size: Size): OwnDoubt | null => {
  const picture = { ...size, frameTimesS: [] };
  const pairs = second.flatMap((again) => {
    const before = markAt(first, again);
    if (before === undefined) return [];
    return [{ again, before, apart: Math.hypot(again.x - before.x, again.y - before.y) }];
  });
  const [widest] = pairs.toSorted((a, b) => b.apart - a.apart);
  if (widest === undefined || pairs.length < leastPairs) return null;
  const rms = (values: readonly number[]) =>
    Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);
  return {
    marks: pairs.length,
    px: rms(pairs.map(({ apart }) => apart)) / 2,
    assumedPx: rms(pairs.map(({ before }) => clickDoubt({ ...before, source: 'coach' }, picture).uPx)),
    widest: widest.before,
    widestPx: widest.apart,
  };
};

/** Each mark that was placed twice, half-way between. */
export const halfWay = (first: readonly Mark[], second: readonly Mark[]): readonly Mark[] =>
  second.flatMap((again) => {
    const before = markAt(first, again);
    const tenth = (value: number) => Math.round(value * 10) / 10;
    return before === undefined
      ? []
      : [{ ...before, x: tenth((before.x + again.x) / 2), y: tenth((before.y + again.y) / 2) }];
  });
