import { swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const softHands: Drill = {
  id: 'soft-hands',
  name: 'Soft hands',
  version: 1,
  purpose: 'Lets the club swing instead of being held.',
  causes: ['grip-tension'],
  stations: stations({
    steps: [
      'Hold the club as tightly as you can: that is ten. As loosely as it just stays: that is one.',
      'Swing at four, and say the number aloud before each swing.',
    ],
  }),
  steps: [
    'Squeeze to ten, let go to four.',
    'Waggle the clubhead until you feel its weight.',
    'Swing from hip height to hip height at four.',
    'Ask yourself at the finish: still four?',
  ],
  feel: 'You hold an open tube of toothpaste and lose none.',
  ladder: ladder({
    rehearsal: 'Four before and four after.',
    brush: 'Four before and after, a brush at the ball spot.',
    'hip-high': 'Four before and after, the ball struck cleanly.',
    'three-quarter': 'Four before and after, the ball struck cleanly.',
    full: 'Five at most before and after, the ball struck cleanly.',
  }),
  overCorrection: 'The club slips: that was two. Back to four.',
  exaggerations: [
    { level: 'mild', how: 'Five of ten.', setting: 'five' },
    { level: 'firm', how: 'Four of ten.', setting: 'four' },
    { level: 'strong', how: 'Three of ten, without a ball.', setting: 'three, slow swings only' },
  ],
  dose: 'Ten before every practice, three days a week.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions],
  notWith: [],
  source: 'common practice, no source',
};
