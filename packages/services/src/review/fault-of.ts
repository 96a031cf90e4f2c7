import { type FaultId, faults } from '@ballfirst/library/types';

const isFault = (word: string): word is FaultId => faults.some((fault) => fault === word);

type Swing = {
  readonly leadFault: string | null;
  readonly startLine: string;
  readonly curve: string;
  readonly hand: string;
};

/** What the flight says where the strikes say nothing: a curve first, then a start beside the line. */
const faultOfFlight = ({ startLine, curve, hand }: Swing): FaultId | null => {
  const lead = hand === 'right' ? 'left' : 'right';
  const trail = hand === 'right' ? 'right' : 'left';
  if (curve === trail) return 'slice';
  if (curve === lead) return 'hook';
  if (startLine === trail) return 'push';
  return startLine === lead ? 'pull' : null;
};

/** The fault a swing is read for: the one a coach chose, else the costliest of the tally, else of the flight, else fat. */
export const faultOf = (chosen: string | null, swing: Swing): FaultId => {
  for (const word of [chosen, swing.leadFault]) if (word !== null && isFault(word)) return word;
  return faultOfFlight(swing) ?? 'fat';
};
