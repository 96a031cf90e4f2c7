import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';

const words: Readonly<Record<string, string>> = {
  ball: 'ball',
  'lead-heel': '{lead} heel',
  'trail-heel': '{trail} heel',
  'lead-ankle': '{lead} ankle',
  'trail-ankle': '{trail} ankle',
  'hip-middle': 'middle of the hips',
  'neck-base': 'middle of the collar',
  'head-centre': 'middle of the head',
  'lead-shoulder': '{lead} shoulder',
  'lead-elbow': '{lead} elbow',
  'lead-wrist': '{lead} wrist',
  'grip-end': 'end of the grip',
  clubhead: 'clubhead',
  'shaft-mid': 'middle of the shaft',
  'lead-thigh-inside': 'inside of the {lead} thigh',
  'thigh-front': 'front of the thighs',
  'seat-line': 'seat',
  'toe-line': 'line of the toes',
  'lead-toe': 'tip of the {lead} shoe',
  'trail-toe': 'tip of the {trail} shoe',
  hands: 'hands',
  'target-stick': 'stick to the target',
  'target-stick-ahead': 'far end of the stick to the target',
};

/** What a marked point is called to a student: left and right, never lead and trail. */
export const pointWords = (point: string, hand: PlayingHand): string =>
  wordsForHand(words[point] ?? point.replaceAll('-', ' '), hand);
