import { type Outcome, outcomeOrder } from '../../../../words/tally.ts';
import type { BallsDraft } from './draft.ts';

/** The four large buttons: off a tee nobody hits the ground first, but under the ball. */
export const largeButtons = (club: BallsDraft['club']): readonly Outcome[] =>
  club === 'driver' ? ['solid', 'sky', 'thin', 'topped'] : ['solid', 'fat', 'thin', 'topped'];

export const otherButtons = (club: BallsDraft['club']): readonly Outcome[] =>
  outcomeOrder.filter((one) => !largeButtons(club).includes(one));
