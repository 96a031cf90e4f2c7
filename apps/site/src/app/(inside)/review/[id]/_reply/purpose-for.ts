import { drills } from '@ballfirst/library/drills';
import { wordsForHand } from '@ballfirst/library/words-for-hand';

type Drill = { readonly id: string; readonly purpose: string };

/** What a drill is for, in left and right for this player; a drill the library does not hold keeps its own words. */
export const purposeFor = ({ id, purpose }: Drill, hand: 'right' | 'left'): string =>
  wordsForHand(drills.find((drill) => drill.id === id)?.purpose ?? purpose, hand);
