import type { RungId } from '@ballfirst/library/types';

/**
 * One practice entry as a student logs it, on the student's local date. `balls` counts swings on a rung without a ball
 * too; `clean` how many met the rung's "clean". `painNewOrWorse`: pain that is new, or worse than usual.
 */
export type PracticeEntry = {
  readonly drillId: string;
  readonly rung: RungId;
  readonly balls: number;
  readonly clean: number;
  readonly filmed: boolean;
  readonly painNewOrWorse: boolean;
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
