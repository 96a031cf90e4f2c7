import { painHoldSentence } from '@ballfirst/library/cautions';
import type { Rung, RungId } from '@ballfirst/library/types';
import type { PracticeEntry } from './entry.ts';
import { askGate, freshWindow, type GateVerdict, type GateWindow, stopAtBalls } from './gate.ts';
import { rungWords } from './rung-words.ts';

export type RungVerdict = 'passed' | 'stay' | 'back' | 'hold';

/**
 * Where a student stands after the last entry. `rung` is the one to practise next; `done`: the last rung is passed;
 * `firmer`: overdo the move more, because there is no rung to step back to. `words` may hold `{lead}` and `{trail}`.
 */
export type RungStep = {
  readonly rung: RungId;
  readonly verdict: RungVerdict;
  readonly done: boolean;
  readonly firmer: boolean;
  readonly balls: number;
  readonly clean: number;
  readonly words: string;
};

const failsToStepBack = 2;
/** What is said when the last rung is passed. */
const lastWords = 'That was the last step: send your coach a swing.';

type Place = { readonly at: number; readonly window: GateWindow; readonly step: RungStep };

const stand = (rung: Rung, window: GateWindow, verdict: RungVerdict, words: string): RungStep => ({
  rung: rung.id,
  verdict,
  done: false,
  firmer: false,
  balls: window.balls,
  clean: window.clean,
  words,
});

const stayWords = (verdict: GateVerdict, window: GateWindow): string => {
  if (verdict === 'not-counted')
    return 'Logged. This step counts when you film it: one swing of three is enough.';
  if (verdict === 'another-day')
    return 'That is good enough. Show it once more on another day and it is yours.';
  if (verdict === 'fail')
    return 'Not there yet. Slow down, look at one swing of three on film, and try the same step again.';
  if (window.balls === 0) return 'Logged. Stay on this step and begin it afresh next time.';
  return `${window.clean} of ${window.balls} so far. Stay on this step; your goal is eight of ten.`;
};

const afterEntry = (ladder: readonly Rung[], place: Place, entry: PracticeEntry, endWords: string): Place => {
  const { at } = place;
  const rung = ladder[at];
  if (rung === undefined) throw new RangeError('The ladder has no such rung.');
  if (entry.pain !== 'none') {
    return { at, window: freshWindow, step: stand(rung, freshWindow, 'hold', painHoldSentence) };
  }
  if (place.step.done || entry.rung !== rung.id) {
    const words = `Logged. Your step is ${rungWords(rung.id)}.`;
    return { ...place, step: { ...stand(rung, place.window, 'stay', words), done: place.step.done } };
  }
  const { verdict, window } = askGate(rung, place.window, entry);
  if (verdict === 'pass') {
    const next = ladder[at + 1];
    const passed = `Passed: ${rungWords(rung.id)}, ${place.window.clean + entry.clean} clean of ${place.window.balls + entry.balls}.`;
    if (next === undefined) {
      const words = `${passed} ${endWords}`;
      return { at, window: freshWindow, step: { ...stand(rung, freshWindow, 'passed', words), done: true } };
    }
    const words = `${passed} Next: ${rungWords(next.id)}.`;
    return { at: at + 1, window: freshWindow, step: stand(next, freshWindow, 'passed', words) };
  }
  if (verdict === 'fail' && window.fails >= failsToStepBack) {
    const before = ladder[at - 1];
    if (before === undefined) {
      const words =
        'Stay on this step and overdo the move more: what feels far too much is often just right.';
      return { at, window: freshWindow, step: { ...stand(rung, freshWindow, 'stay', words), firmer: true } };
    }
    const words = `One step back to ${rungWords(before.id)}: it comes faster from there.`;
    return { at: at - 1, window: freshWindow, step: stand(before, freshWindow, 'back', words) };
  }
  return { at, window, step: stand(rung, window, 'stay', stayWords(verdict, window)) };
};

/**
 * Reads all entries of a programme in order and says where the student stands. Entries of another rung than the current
 * one are kept but decide nothing; pain that is new or worse holds the practice at once.
 *
 * @param entries - in the order they were logged
 * @param ladder - the programme's rungs in order, at least one
 * @param startAt - the rung the programme begins with; the first if not given
 * @param endWords - what is said when the last rung is passed
 * @throws RangeError on an empty ladder, an unknown rung or an impossible entry
 */
export const nextRung = (
  entries: readonly PracticeEntry[],
  ladder: readonly Rung[],
  startAt?: RungId,
  endWords = lastWords,
): RungStep => {
  const at = startAt === undefined ? 0 : ladder.findIndex((rung) => rung.id === startAt);
  const first = ladder[at];
  if (first === undefined) throw new RangeError('A ladder has at least the rung it starts with.');
  const words = `Begin with ${rungWords(first.id)}. A try ends after ${stopAtBalls} balls at the latest.`;
  const start: Place = { at, window: freshWindow, step: stand(first, freshWindow, 'stay', words) };
  return entries.reduce((place, entry) => afterEntry(ladder, place, entry, endWords), start).step;
};
