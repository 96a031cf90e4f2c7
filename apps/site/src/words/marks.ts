import type { Reply } from '@ballfirst/contracts/client';

type Mark = Reply<'readMarks'>['marks'][number];

/** Moments of the swing and points on the picture, as a coach says them. */
export const positionNames: Record<Mark['position'], string> = {
  address: 'Address',
  'shaft-parallel-back': 'Shaft parallel, going back',
  'lead-arm-parallel-back': 'Lead arm parallel, going back',
  top: 'Top',
  'lead-arm-parallel-down': 'Lead arm parallel, coming down',
  'shaft-parallel-down': 'Shaft parallel, coming down',
  impact: 'Impact',
  'shaft-parallel-through': 'Shaft parallel, going through',
  finish: 'Finish',
};

export const positionHints: Record<Mark['position'], string> = {
  address: 'Settled over the ball, before the club moves.',
  'shaft-parallel-back': 'Going back, the shaft lies level with the ground.',
  'lead-arm-parallel-back': 'Going back, the lead arm lies level with the ground.',
  top: 'The club turns from back to down.',
  'lead-arm-parallel-down': 'Coming down, the lead arm lies level with the ground.',
  'shaft-parallel-down': 'Coming down, the shaft lies level with the ground.',
  impact: 'The club meets the ball or the ground.',
  'shaft-parallel-through': 'Past the ball, the shaft lies level with the ground.',
  finish: 'The player has come to rest.',
};

export const pointNames: Record<Mark['point'], string> = {
  ball: 'Ball',
  'lead-heel': 'Lead heel',
  'trail-heel': 'Trail heel',
  'lead-ankle': 'Lead ankle',
  'trail-ankle': 'Trail ankle',
  'hip-middle': 'Hip-middle',
  'neck-base': 'Neck-base',
  'head-centre': 'Head centre',
  'lead-shoulder': 'Lead shoulder',
  'lead-elbow': 'Lead elbow',
  'lead-wrist': 'Lead wrist',
  'grip-end': 'Grip end',
  clubhead: 'Clubhead',
  'shaft-mid': 'Middle of the shaft',
  'lead-thigh-inside': 'Inside of the lead thigh',
  'thigh-front': 'Front of the thighs',
  'seat-line': 'Seat line',
  'toe-line': 'Toe line',
  'lead-toe': 'Tip of the lead shoe',
  'trail-toe': 'Tip of the trail shoe',
  hands: 'Hands',
  'target-stick': 'Stick on the target line, near end',
  'target-stick-ahead': 'Stick on the target line, end towards the target',
};

/** Where exactly to click. */
export const pointHints: Partial<Record<Mark['point'], string>> = {
  ball: 'Click the middle of the ball.',
  'hip-middle': 'Half-way between the outer edges of the hips at belt height, not the buckle.',
  'neck-base': 'The middle of the collar, not the breastbone.',
  'head-centre': 'The middle of the head, not the cap.',
  'grip-end': 'The butt of the club.',
  'lead-ankle': 'The middle of the ankle.',
  'trail-ankle': 'The middle of the ankle.',
  clubhead: 'The middle of the clubhead; where it is a streak, the middle of the streak.',
  hands: 'Between the two hands, where they meet on the grip.',
  'seat-line': 'From behind: the edge of the seat farthest from the ball.',
  'toe-line': 'From behind: the toes, at the end of the shoe nearest the ball.',
  'lead-toe': 'From behind: where the tip of the lead shoe meets the ground.',
  'trail-toe': 'From behind: where the tip of the trail shoe meets the ground.',
  'thigh-front': 'From behind: the front edge of the thighs, under the hands.',
  'lead-thigh-inside': 'The inner edge of the lead thigh, at the height of the hands.',
  'shaft-mid': 'Half-way along the part of the shaft that can be seen.',
  'lead-wrist': 'The middle of the wrist, where a watch would sit.',
};
