import type { Rung, RungId } from '@ballfirst/library/types';
import { type SprtPlan, sprtPlan } from '@ballfirst/numbers/sprt-plan';
import { sprtVerdict } from '@ballfirst/numbers/sprt-verdict';
import { checkEntry, type PracticeEntry } from './entry.ts';

/**
 * Where a student stands on one rung: what counts in this try, on which days, how many tries ended before it (undecided
 * or failed) and how many of them failed.
 */
export type GateWindow = {
  readonly balls: number;
  readonly clean: number;
  readonly days: readonly string[];
  readonly tries: number;
  readonly fails: number;
};
export type GateVerdict = 'pass' | 'fail' | 'undecided' | 'another-day' | 'not-counted';

export const freshWindow: GateWindow = { balls: 0, clean: 0, days: [], tries: 0, fails: 0 };

/** Balls after which an undecided try ends: the student stays and begins a new one. */
export const stopAtBalls = 30;
const gentleRungs: ReadonlySet<RungId> = new Set(['rehearsal', 'brush', 'hip-high']);
const dayOne = { balls: 10, clean: 6 };

const gentlePlan = sprtPlan({ p0: 0.5, p1: 0.7, alpha: 0.1, beta: 0.1 });
const fullPlan = sprtPlan({ p0: 0.5, p1: 0.8, alpha: 0.1, beta: 0.1 });

/** The sequential test of a rung: clean half the time is not enough, eight (slow rungs: seven) of ten is. */
export const planOf = (rung: RungId): SprtPlan => (gentleRungs.has(rung) ? gentlePlan : fullPlan);

const passesOnDayOne = (rung: Rung, window: GateWindow): boolean =>
  gentleRungs.has(rung.id) &&
  window.days.length === 1 &&
  window.tries === 0 &&
  window.balls >= dayOne.balls &&
  window.clean * dayOne.balls >= dayOne.clean * window.balls;

/**
 * The one gate rule, asked at the end of an entry. Wald's sequential test (p0 .5, p1 .8; .7 up to hip-high; both risks
 * .1); the slow rungs may also pass on the first day at 6 of 10; from three-quarter on a pass needs two days; a try that
 * is undecided after 30 balls ends in `undecided` and the next entry begins a new one.
 *
 * @returns the verdict and the window as the next entry finds it
 * @throws RangeError on an impossible entry
 * @source Wald 1947 for the test; its figures are common practice, no source
 */
export const askGate = (
  rung: Rung,
  before: GateWindow,
  entry: Pick<PracticeEntry, 'balls' | 'clean' | 'filmed' | 'localDate'>,
): { readonly verdict: GateVerdict; readonly window: GateWindow } => {
  checkEntry(entry);
  if (rung.filmed && !entry.filmed) return { verdict: 'not-counted', window: before };
  const window: GateWindow = {
    balls: before.balls + entry.balls,
    clean: before.clean + entry.clean,
    days: before.days.includes(entry.localDate) ? before.days : [...before.days, entry.localDate],
    tries: before.tries,
    fails: before.fails,
  };
  const nextTry = { ...freshWindow, tries: before.tries + 1, fails: before.fails };
  if (rung.allOf !== undefined) {
    const all = entry.balls >= rung.allOf && entry.clean === entry.balls;
    return all ? { verdict: 'pass', window: freshWindow } : { verdict: 'undecided', window: nextTry };
  }
  if (passesOnDayOne(rung, window)) return { verdict: 'pass', window: freshWindow };
  const verdict = sprtVerdict(planOf(rung.id), window.clean, window.balls);
  if (verdict === 'pass') {
    const oneDayOnly = !gentleRungs.has(rung.id) && window.days.length < 2;
    return oneDayOnly ? { verdict: 'another-day', window } : { verdict, window: freshWindow };
  }
  if (verdict === 'fail') return { verdict, window: { ...nextTry, fails: before.fails + 1 } };
  return { verdict, window: window.balls >= stopAtBalls ? nextTry : window };
};
