import type { Mark } from './marks/marks.ts';
import { tempoPositions } from './tempo.ts';

/**
 * Whether what is marked is measured by the times of the frames: a clubhead over frames and the tempo are, all else is
 * measured by the place of the marks alone, so that the table of a clip's frame times need not be read for it.
 *
 * @param trail - the clubhead over frames
 */
export const asksForTimes = (marks: readonly Pick<Mark, 'position'>[], trail: readonly unknown[]): boolean =>
  trail.length > 0 || tempoPositions.every((wanted) => marks.some(({ position }) => position === wanted));
