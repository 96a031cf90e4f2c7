import { wordsForHand } from '@ballfirst/library/words-for-hand';

const names: Readonly<Record<string, string>> = {
  address: 'Before you swing',
  'shaft-parallel-back': 'Going back, club level with the ground',
  'lead-arm-parallel-back': 'Going back, {lead} arm level with the ground',
  top: 'At the top',
  'lead-arm-parallel-down': 'Coming down, {lead} arm level with the ground',
  'shaft-parallel-down': 'Coming down, club level with the ground',
  impact: 'As you meet the ball',
  'shaft-parallel-through': 'Past the ball, club level with the ground',
  finish: 'At the finish',
};

/** A moment of the swing as a student reads it: left and right for this player. */
export const momentForStudent = (position: string, hand: 'right' | 'left'): string =>
  wordsForHand(names[position] ?? 'Your swing', hand);
