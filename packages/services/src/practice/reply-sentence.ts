import { causes } from '@ballfirst/library/causes';
import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';

/** The one cause in one sentence for this player's hand; without a cause, where the reply is to be found. */
export const replySentence = (causeId: string | null, hand: PlayingHand): string => {
  const cause = causes.find(({ id }) => id === causeId);
  return cause === undefined ? 'Your coach has answered you in words.' : wordsForHand(cause.forStudent, hand);
};
