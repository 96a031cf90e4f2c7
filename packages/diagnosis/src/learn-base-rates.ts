import { unseenIn } from '@ballfirst/library/checks/unseen-in';
import type { CameraView, Cause, FaultId } from '@ballfirst/library/types';

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
  readonly rate: number;
};

/** Weight of the library's own rate, in swings: Beta(6 q, 6 (1 - q)). Common practice, no source. */
const swingsOfPrior = 6;

const couldBeSeen = (cause: Cause, { fault, views }: ChosenCause): boolean =>
  cause.brings[fault] !== undefined && views.some((view) => unseenIn(cause, view) === null);

/**
 * An academy's own base rates. Only diagnoses that the ranking has not led count: those chosen blind and those chosen
 * against it, and only for causes that could be seen in the views at hand. To begin anew, give the later ones only.
 *
 * @param causes - the library's, with their own rates
 * @param diagnoses - all that were stored; the others are left out here
 * @returns one line for each cause, in the order given; `rate` lies strictly between 0 and 1
 * @source mean of a Beta distribution after `seen` swings (conjugate prior)
 */
export function learnBaseRates(
  causes: readonly Cause[],
  diagnoses: readonly ChosenCause[],
): readonly LearnedRate[] {
  const free = diagnoses.filter(({ blind, overruled }) => blind || overruled);
  return causes.map((cause) => {
    const seen = free.filter((diagnosis) => couldBeSeen(cause, diagnosis));
    const chosen = swingsOf(seen.filter(({ causeId }) => causeId === cause.id));
    const times = swingsOf(seen);
    const rate = (swingsOfPrior * cause.baseRate + chosen) / (swingsOfPrior + times);
    return { causeId: cause.id, chosen, seen: times, rate };
  });
}

const swingsOf = (diagnoses: readonly ChosenCause[]): number =>
  diagnoses.reduce((sum, { swings = 1 }) => sum + swings, 0);

/** The rates as a ranking takes them: those that something was learned of; the others are the library's. */
export const ratesById = (learned: readonly LearnedRate[]): Readonly<Record<string, number>> =>
  Object.fromEntries(learned.filter(({ seen }) => seen > 0).map(({ causeId, rate }) => [causeId, rate]));
