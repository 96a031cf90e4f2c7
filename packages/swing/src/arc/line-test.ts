import { studentQuantile } from '@ballfirst/numbers/student-quantile';
import type { Known } from './arc-question.ts';

export type LineTest = {
  readonly brushes: number;
  /** Mean place where the mark starts, + past the line towards the target. */
  readonly meanStartMm: number;
  readonly sdMm: number;
  /** 95 % interval of the mean. */
  readonly lowMm: number;
  readonly highMm: number;
  /** How many start behind the line. */
  readonly behind: number;
};

const leastBrushes = 3;
const mostBrushes = 50;

/**
 * The line test: brushes over a line without a ball, and where each mark on the ground starts.
 *
 * @param startsMm - one for each brush, 3 to 50, + past the line towards the target
 * @throws RangeError on too few or too many brushes, a number that is not finite, or a start farther than a metre away
 * @source mean and Student's interval; five brushes are common practice
 * @example lineTest([-40, -25, -60, -10, -35]).meanStartMm // -34
 */
export function lineTest(startsMm: readonly number[]): LineTest {
  const n = startsMm.length;
  if (n < leastBrushes || n > mostBrushes) {
    throw new RangeError(`A line test has ${leastBrushes} to ${mostBrushes} brushes, not ${n}.`);
  }
  const wrong = startsMm.findIndex((start) => !(Math.abs(start) <= 1000));
  if (wrong >= 0) throw new RangeError(`Brush ${wrong + 1} has no start within a metre of the line.`);
  const mean = startsMm.reduce((sum, start) => sum + start, 0) / n;
  const sd = Math.sqrt(startsMm.reduce((sum, start) => sum + (start - mean) ** 2, 0) / (n - 1));
  const half = (studentQuantile(0.975, n - 1) * sd) / Math.sqrt(n);
  return {
    brushes: n,
    meanStartMm: mean,
    sdMm: sd,
    lowMm: mean - half,
    highMm: mean + half,
    behind: startsMm.filter((start) => start < 0).length,
  };
}

/**
 * Depth of the arc from where the brush starts and where the arc is lowest.
 *
 * @throws RangeError when the arc would be lowest before the brush starts
 * @source half chord c = L - start, b = c^2 / (2 rho): short arcs, error below 1 % up to 15 mm
 * @example depthFromBrush(-35, { value: 80, u: 20 }, 1472) // 4.5 mm
 */
export function depthFromBrush(startMm: number, lowPointAheadMm: Known, seenRadiusMm: number): Known {
  const chord = lowPointAheadMm.value - startMm;
  if (!(chord >= 0)) throw new RangeError('The arc is lowest before the brush starts.');
  if (!(seenRadiusMm > 0)) throw new RangeError('The radius is positive.');
  return { value: chord ** 2 / (2 * seenRadiusMm), u: (chord * lowPointAheadMm.u) / seenRadiusMm };
}
