import { everyDrill } from '@ballfirst/library/cautions';
import { drillById } from '@ballfirst/library/drills';
import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';

/** The cautions of a letter that speaks of swinging: those of every drill, and the drill's own where there is one. */
export const cautionsOf = (drillId: string | null, hand: PlayingHand): readonly string[] => {
  const own = drillId === null ? [] : drillById(drillId).cautions;
  return [...new Set<string>([...everyDrill, ...own])].map((caution) => wordsForHand(caution, hand));
};
