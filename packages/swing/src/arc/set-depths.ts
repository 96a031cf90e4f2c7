import { bisect } from '@ballfirst/numbers/bisect';
import { jeffreysInterval } from '@ballfirst/numbers/jeffreys-interval';
import type { Known } from './arc-question.ts';
import { depthFromFatShare, meanHalfChordMm, type SwingSet } from './fat-risk.ts';
import { depthFromBrush, lineTest } from './line-test.ts';
import type { SetSpread } from './set-spread.ts';

/** How many of a student's balls met the ground first. */
export type CountedBalls = { readonly fat: number; readonly of: number };
export type DepthFrom = 'line-test' | 'balls';

/** A set as it is reckoned with, and at both ends of two chances in three. */
export type SetDepths = {
  readonly from: DepthFrom;
  readonly set: SwingSet;
  readonly shallow: SwingSet;
  readonly deep: SwingSet;
};

/** Scatter of the depth from swing to swing. Common practice, no source. */
export const usualDepthScatterMm = 2;
const leastBalls = 5;
const level = 0.68;

type Given = {
  readonly spread: SetSpread;
  readonly seenRadiusMm: number;
  readonly lineTestMm: readonly number[] | null;
  readonly balls: CountedBalls | null;
};

/**
 * The depth of a set's arc, from where the brushes of a line test start or else from the balls that met the ground first.
 * Both say where the ground is met for the mean low point as it was read: an error of that mean moves the depth with it and
 * not where the ground is met, so that it enters neither.
 *
 * @returns null where neither a line test nor five counted balls fit what the frames show
 * @throws RangeError on brushes or counts that are none
 * @source `depthFromBrush`, `depthFromFatShare`; share (x + 1/2)/(n + 1), its ends by Jeffreys (Brown, Cai & DasGupta 2001)
 */
export function setDepths({ spread, seenRadiusMm, lineTestMm, balls }: Given): SetDepths | null {
  const { meanMm, scatterMm, degrees } = spread;
  const low: Known = { value: meanMm.value, u: scatterMm };
  const setOf = (depthMm: Known, u = scatterMm): SwingSet => ({
    ...{ lowPointAheadMm: { ...low, u }, degrees, seenRadiusMm },
    depthMm: { value: depthMm.value, u: usualDepthScatterMm },
  });
  if (lineTestMm !== null) {
    const { meanStartMm, sdMm, brushes } = lineTest(lineTestMm);
    const uStart = sdMm / Math.sqrt(brushes);
    /** The depth whose brushes begin there on average: those of the mean depth begin a little farther back. */
    const depthAt = (startMm: number): Known => {
      const flat = depthFromBrush(startMm, low, seenRadiusMm);
      const chordAt = (value: number) => meanHalfChordMm(setOf({ ...flat, value }));
      const [from, to] = [flat.value - 3 * usualDepthScatterMm, flat.value + usualDepthScatterMm];
      return { ...flat, value: bisect(chordAt, low.value - startMm, from, to, 1e-4) };
    };
    if (meanStartMm + uStart <= low.value) {
      return {
        from: 'line-test',
        set: setOf(depthAt(meanStartMm), Math.hypot(scatterMm, uStart)),
        shallow: setOf(depthAt(meanStartMm + uStart)),
        deep: setOf(depthAt(meanStartMm - uStart)),
      };
    }
  }
  if (balls === null || balls.of < leastBalls) return null;
  const ends = jeffreysInterval(balls.fat, balls.of, level);
  const inside = (share: number) => Math.min(0.995, Math.max(0.005, share));
  const depthFor = (share: number) =>
    setOf(depthFromFatShare(inside(share), low, seenRadiusMm, usualDepthScatterMm, 30, degrees));
  try {
    return {
      from: 'balls',
      set: depthFor((balls.fat + 0.5) / (balls.of + 1)),
      shallow: depthFor(ends.low),
      deep: depthFor(ends.high),
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
}
