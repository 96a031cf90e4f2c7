import { type Position, positions } from '@ballfirst/swing/marks/marks';
import { frameAt, middleOf } from '../../../../../frames/frame-table.ts';
import { frameOfMoment, type Mark } from '../_marking/marking.ts';

/** A swing as it can be tied to another: its marks name its moments, and where it was heard to strike. */
export type Timed = {
  readonly marks: readonly Mark[];
  readonly timesS: readonly number[];
  /** The frame at which the machine heard the strike; null: not heard, or not surely. */
  readonly heardAt: number | null;
};
/** One moment that both swings have, in seconds of each. */
export type Tie = { readonly moment: Position; readonly hereS: number; readonly thereS: number };

const timeOf = ({ marks, timesS, heardAt }: Timed, moment: Position): number | null => {
  const frame = frameOfMoment(marks, moment) ?? (moment === 'impact' ? heardAt : null);
  return frame === null ? null : (timesS[frame] ?? null);
};

/** The moments that both swings have, in the order of the swing; one that runs back in either is left out. */
export const tiesBetween = (here: Timed, there: Timed): readonly Tie[] => {
  const ties: Tie[] = [];
  for (const moment of positions) {
    const [hereS, thereS] = [timeOf(here, moment), timeOf(there, moment)];
    if (hereS === null || thereS === null) continue;
    const before = ties.at(-1);
    if (before === undefined || (hereS > before.hereS && thereS > before.thereS))
      ties.push({ moment, hereS, thereS });
  }
  return ties;
};

/**
 * The instant of the other swing that belongs to an instant of this one: at a tie the same moment, between two ties as far
 * along, before the first and after the last at the same pace. Without a tie both run from their start.
 */
export const timeBeside = (timeS: number, ties: readonly Tie[]): number => {
  const next = ties.find(({ hereS }) => hereS >= timeS);
  const before = ties.findLast(({ hereS }) => hereS < timeS);
  if (next === undefined || before === undefined) {
    const tie = next ?? before;
    return tie === undefined ? timeS : tie.thereS + (timeS - tie.hereS);
  }
  const along = (timeS - before.hereS) / (next.hereS - before.hereS);
  return before.thereS + along * (next.thereS - before.thereS);
};

/** The frame of the other swing beside a frame of this one, moved by hand by so many of its own frames. */
export const frameBeside = (
  frame: number,
  here: readonly number[],
  there: readonly number[],
  ties: readonly Tie[],
  byHand: number,
): number => {
  const time = here[frame];
  if (time === undefined || there.length === 0) return 0;
  // A tied moment is met to the frame; between ties the picture that stands half-way through this frame's showing.
  const tied = ties.some(({ hereS }) => hereS === time);
  const found = frameAt(there, timeBeside(tied ? time : middleOf(here, frame), ties));
  return Math.min(there.length - 1, Math.max(0, found + byHand));
};
