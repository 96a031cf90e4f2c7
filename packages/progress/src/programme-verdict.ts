import { newcombeDifference } from '@ballfirst/numbers/newcombe-difference';
import { minimalDetectableChange } from './minimal-detectable-change.ts';
import { type Verdict, verdictOf } from './verdict.ts';

/** A measurement with its standard uncertainty, same unit. */
export type Measured = { readonly value: number; readonly u: number };
/** Balls of a tally: how many there were, how many had the fault, how many the opposite miss. */
export type Balls = { readonly balls: number; readonly fault: number; readonly opposite: number };
export type Side = { readonly measured: Measured | null; readonly tally: Balls };

export type ProgrammeQuestion = {
  readonly before: Side;
  readonly after: Side;
  /** The band of the pre-named measurement; an open edge is null. */
  readonly low: number | null;
  readonly high: number | null;
  /** SD between swings of one player and set-up, in the unit of the measurement. */
  readonly withinSd: number;
};
export type ProgrammeVerdict = {
  readonly verdict: Verdict;
  /** What it rests on. */
  readonly by: 'measurement' | 'tally';
  /** The change of the measurement, and the smallest that is more than chance; null where one side was not measured. */
  readonly change: { readonly by: number; readonly detectable: number } | null;
  /** The change of the fault's share with its 95 % interval; null where a tally is empty. */
  readonly fault: Changed | null;
  readonly opposite: Changed | null;
};
export type Changed = { readonly by: number; readonly low: number; readonly high: number };

const changed = (before: Balls, after: Balls, of: 'fault' | 'opposite'): Changed | null => {
  if (before.balls === 0 || after.balls === 0) return null;
  const interval = newcombeDifference(
    { successes: after[of], n: after.balls },
    { successes: before[of], n: before.balls },
  );
  return { by: after[of] / after.balls - before[of] / before.balls, ...interval };
};

const measuredVerdict = (question: ProgrammeQuestion) => {
  const { before, after, low, high, withinSd } = question;
  if (before.measured === null || after.measured === null) return null;
  const detectable = minimalDetectableChange({
    withinSd,
    // The doubt of each reading is that of its own set-up.
    betweenSetUpsSd: Math.sqrt((before.measured.u ** 2 + after.measured.u ** 2) / 2),
    swingsBefore: 1,
    swingsAfter: 1,
  });
  const [then, now] = [before.measured.value, after.measured.value];
  return {
    verdict: verdictOf({ before: then, after: now, low, high, detectable }),
    change: { by: now - then, detectable },
  };
};

/**
 * Whether a programme works: by its pre-named measurement where that shows a change, else by the balls. The opposite miss
 * growing for sure, while the measurement or the fault moves the right way, is over-correcting: a sign that it works.
 *
 * @throws RangeError on counts that are none, or a negative spread
 * @source minimal detectable change (Weir 2005), difference of shares (Newcombe 1998, method 10)
 */
export const programmeVerdict = (question: ProgrammeQuestion): ProgrammeVerdict => {
  const { before, after } = question;
  const measured = measuredVerdict(question);
  const fault = changed(before.tally, after.tally, 'fault');
  const opposite = changed(before.tally, after.tally, 'opposite');
  const fewer = fault !== null && fault.high < 0;
  const more = fault !== null && fault.low > 0;
  const told = measured !== null && measured.verdict !== 'no-clear-change' ? measured.verdict : null;
  const rightWay = told === null ? fewer : told !== 'worse';
  const shown = { change: measured?.change ?? null, fault, opposite };
  if (rightWay && opposite !== null && opposite.low > 0) {
    return { verdict: 'over-correcting', by: 'tally', ...shown };
  }
  if (told !== null) return { verdict: told, by: 'measurement', ...shown };
  // One swing measured on each side shows large changes only: where it shows none, clear balls still count.
  if (fewer || more) return { verdict: fewer ? 'better' : 'worse', by: 'tally', ...shown };
  return { verdict: 'no-clear-change', by: measured === null ? 'tally' : 'measurement', ...shown };
};
