import { unseenIn } from '@ballfirst/library/checks/unseen-in';
import type { CameraView, Cause, FaultId } from '@ballfirst/library/types';
import { weightOf } from './weights.ts';

/** One diagnosis as it was stored: what was chosen, for which fault, in which views, and how freely. */
export type ChosenCause = {
  readonly fault: FaultId;
  readonly causeId: string;
  readonly views: readonly CameraView[];
  /** Chosen before the ranking was shown. */
  readonly blind: boolean;
  /** Chosen against the first of the ranking. */
  readonly overruled: boolean;
  /** So many swings that were chosen just so; left out: one. */
  readonly swings?: number;
};

/** How often a cause was chosen of the times it could have been, and the rate that comes out. */
export type LearnedRate = {
  readonly causeId: string;
  readonly chosen: number;
  readonly seen: number;
  /** How often the library's own rates let it be chosen first in those swings. */
  readonly expected: number;
  readonly rate: number;
};

/** Weight of the library's own rate, in swings on which the cause is there for certain. Common practice, no source. */
const swingsOfPrior = 6;

const couldBeSeen = (cause: Cause, { fault, views }: ChosenCause): boolean =>
  cause.brings[fault] !== undefined && views.some((view) => unseenIn(cause, view) === null);

/** What a cause brings of a fault before anything is marked: its rate times its weight. */
const bringing = (cause: Cause, fault: FaultId): number => {
  const weight = cause.brings[fault];
  return weight === undefined ? 0 : cause.baseRate * weightOf[weight];
};

/**
 * An academy's own base rates. Only diagnoses that the ranking has not led count: those chosen blind and those chosen
 * against it, and only for causes that could be seen in the views at hand. To begin anew, give the later ones only.
 *
 * A coach names one cause as the first, so that how often it is named is no base rate: it is set against how often the
 * library's rates would let it be the first of the causes that could be seen. The odds of the library's rate q change by
 * (6 q + named) / (6 q + expected); named as often as expected, the rate stays.
 *
 * @param causes - the library's, with their own rates
 * @param diagnoses - all that were stored; the others are left out here
 * @returns one line for each cause, in the order given; `rate` lies strictly between 0 and 1
 * @source observed over expected with a gamma prior of mean 1 (Clayton & Kaldor 1987, from memory); decision 0009 measures it
 */
export function learnBaseRates(
  causes: readonly Cause[],
  diagnoses: readonly ChosenCause[],
): readonly LearnedRate[] {
  const counts = new Map(causes.map(({ id }) => [id, { chosen: 0, seen: 0, expected: 0 }]));
  for (const diagnosis of diagnoses) {
    if (!diagnosis.blind && !diagnosis.overruled) continue;
    const { fault, causeId, swings = 1 } = diagnosis;
    const visible = causes.filter((cause) => couldBeSeen(cause, diagnosis));
    const whole = visible.reduce((sum, cause) => sum + bringing(cause, fault), 0);
    for (const cause of visible) {
      const count = counts.get(cause.id);
      if (count === undefined) continue;
      count.seen += swings;
      count.expected += (swings * bringing(cause, fault)) / whole;
      if (cause.id === causeId) count.chosen += swings;
    }
  }
  return causes.map(({ id, baseRate }) => {
    const { chosen, seen, expected } = counts.get(id) ?? { chosen: 0, seen: 0, expected: 0 };
    const prior = swingsOfPrior * baseRate;
    const odds = (baseRate / (1 - baseRate)) * ((prior + chosen) / (prior + expected));
    return { causeId: id, chosen, seen, expected, rate: seen === 0 ? baseRate : odds / (1 + odds) };
  });
}

/** The rates as a ranking takes them: those that something was learned of; the others are the library's. */
export const ratesById = (learned: readonly LearnedRate[]): Readonly<Record<string, number>> =>
  Object.fromEntries(learned.filter(({ seen }) => seen > 0).map(({ causeId, rate }) => [causeId, rate]));
