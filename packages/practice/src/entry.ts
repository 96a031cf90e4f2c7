import type { RungId } from '@ballfirst/library/types';

/** Pain a student reports: none (or as always), new, or worse than usual. */
export type Pain = 'none' | 'new' | 'worse';

/**
 * One practice entry of a programme, as a student logs it. `balls` counts swings on a rung without a ball too; `clean`
 * how many met the rung's "clean"; `localDate` is the student's own calendar day, YYYY-MM-DD.
 */
export type PracticeEntry = {
  readonly rung: RungId;
  readonly balls: number;
  readonly clean: number;
  readonly filmed: boolean;
  readonly pain: Pain;
  readonly localDate: string;
};

/** @throws RangeError on a tally over its total, a negative or broken number */
export const checkEntry = (entry: Pick<PracticeEntry, 'balls' | 'clean'>): void => {
  const { balls, clean } = entry;
  if (!Number.isInteger(balls) || balls < 1) throw new RangeError('A practice entry has at least one swing.');
  if (!Number.isInteger(clean) || clean < 0 || clean > balls) {
    throw new RangeError('Clean strikes lie between none and the number of balls.');
  }
};
