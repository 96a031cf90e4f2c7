import type { Sign } from '@ballfirst/library/types';
import type { Reading } from '@ballfirst/swing/measurement';

export type Answer = 'yes' | 'no' | 'cannot-tell';
export type ObservationAnswer = { readonly key: string; readonly answer: Answer };

/**
 * One sign of a cause with what was read or seen for it, and its log likelihood ratio, clipped. `weight`: how much of its
 * say is left at the doubt it was read with, 0..1.
 */
export type Evidence = {
  readonly sign: Sign;
  readonly logRatio: number;
  readonly weight: number;
  readonly reading: Reading | null;
  readonly answer: Answer | null;
};

/** What is known of a swing, found by key. */
export type Known = {
  readonly readings: ReadonlyMap<string, Reading>;
  readonly answers: ReadonlyMap<string, Answer>;
};

export function known(readings: readonly Reading[], observations: readonly ObservationAnswer[]): Known {
  return {
    readings: new Map(readings.map((reading) => [reading.key, reading])),
    answers: new Map(observations.map(({ key, answer }) => [key, answer])),
  };
}
