import { easyTurnSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const waistHighSwings: Drill = {
  id: 'waist-high-swings',
  name: 'Waist-high swings',
  version: 1,
  purpose: 'Lets the club travel round you instead of chopping across the ball.',
  causes: ['out-to-in', 'under-turn'],
  stations: stations({
    steps: [
      'Make room for a level swing: nobody and nothing within 3 m on any side.',
      'Five swings with the club at chest height, five at belt height, then one to the ball.',
    ],
    at: {
      home: {
        lastRung: 'rehearsal',
        steps: ['Only where the club cannot reach wall, lamp or ceiling, and slowly.'],
      },
    },
  }),
  steps: [
    'Hold the club level at chest height and swing it back and through round you.',
    'Lower it to belt height and swing again.',
    'Bend from the hips, sole the club and make the same round swing.',
    'Watch where the ball starts.',
  ],
  feel: 'The club runs round you like a rope round a pole.',
  ladder: ladder({
    rehearsal: 'Level swings: the club went round and came back at the same height.',
    brush: 'Belt-high swings, then a brush at the ball spot or past it.',
    'hip-high': 'The ball started at the target or a little to the {trail} of it.',
    'three-quarter': 'The ball started at the target or a little to the {trail} of it.',
    full: 'The ball started at the target or a little to the {trail} of it, with your own rhythm.',
  }),
  overCorrection: 'Too round: the ball curves to the {lead} side. Make fewer of the high swings.',
  exaggerations: [
    { level: 'mild', how: 'Belt height only.', setting: 'five swings at belt height' },
    { level: 'firm', how: 'Chest and belt height.', setting: 'five at chest height, five at belt height' },
  ],
  dose: 'Three rounds of five, five and three, three days a week.',
  minutes: 15,
  ballsAtMost: 40,
  cautions: [...swingCautions, easyTurnSentence],
  notWith: ['low-back-pain', 'shoulder-pain'],
  source: 'common practice, no source',
};
