import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tally } from '@ballfirst/contracts/words';

/** The kinds of ball a tally names. */
export const tallied = ['solid', 'fat', 'thin', 'topped', 'heel', 'toe', 'shank', 'sky'] as const;

/** @throws ProblemError tally-over-total, tally-empty */
export const checkTally = (tally: Tally): void => {
  const named = tallied.reduce((sum, kind) => sum + tally[kind], 0);
  if (named > tally.balls) throw new ProblemError('tally-over-total');
  if (named === 0) throw new ProblemError('tally-empty');
};
