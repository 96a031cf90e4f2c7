import type { Standing } from '@ballfirst/contracts/words';
import type { z } from 'zod';

export type StandingWord = z.output<typeof Standing>;

/** To which standings a manager may move a student from each. */
const moves: Readonly<Record<StandingWord, readonly StandingWord[]>> = {
  invited: ['trial', 'paid', 'left'],
  trial: ['paid', 'lapsed', 'left'],
  lapsed: ['trial', 'paid', 'left'],
  paid: ['paused', 'lapsed', 'left'],
  paused: ['paid', 'left'],
  left: ['trial', 'paid'],
};

export const mayMove = (from: StandingWord, to: StandingWord): boolean => moves[from].includes(to);
