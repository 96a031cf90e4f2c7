import type { RungId } from '@ballfirst/library/types';

const words: Readonly<Record<RungId, string>> = {
  rehearsal: 'slow swings without a ball',
  brush: 'brushing the ground without a ball',
  'hip-high': 'hip-high swings',
  'three-quarter': 'three-quarter swings',
  full: 'full swings',
  transfer: 'new clubs and new targets',
};

/** What a rung is called in a student's sentence. */
export const rungWords = (rung: RungId): string => words[rung];
