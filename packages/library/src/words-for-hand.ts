/** The hand a player plays with; a right-handed player's lead side is the left. */
export type PlayingHand = 'right' | 'left';

/**
 * Puts left and right for `{lead}` and `{trail}` in a sentence of the library: students never read lead and trail.
 *
 * @example wordsForHand('Turn your {lead} hand.', 'right') // 'Turn your left hand.'
 */
export const wordsForHand = (sentence: string, hand: PlayingHand): string => {
  const lead = hand === 'right' ? 'left' : 'right';
  return sentence.replaceAll('{lead}', lead).replaceAll('{trail}', hand);
};
