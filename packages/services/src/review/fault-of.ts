import { type FaultId, faults } from '@ballfirst/library/types';

const isFault = (word: string): word is FaultId => faults.some((fault) => fault === word);

/** The fault a swing is read for: the one a coach chose, else the costliest of the tally, else fat. */
export const faultOf = (chosen: string | null, leadFault: string | null): FaultId => {
  for (const word of [chosen, leadFault]) if (word !== null && isFault(word)) return word;
  return 'fat';
};
