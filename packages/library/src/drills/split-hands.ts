import { slowSentence, swingCautions, wristSentence } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const splitHands: Drill = {
  id: 'split-hands',
  name: 'Split hands',
  version: 1,
  purpose: 'Lets you feel the face turn back to square.',
  causes: ['held-off', 'open-face', 'weak-grip'],
  stations: stations({
    steps: [
      'Hold the club with a gap of one and a half ball diameters (5 to 8 cm) between your hands.',
      'Swing from hip height to hip height, slowly.',
    ],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Set up to the ball with the hands apart.',
    'Swing back until the shaft is level: the toe of the club points up.',
    'Swing through until it is level again: the toe points up again.',
    'Close the gap and make the same swing.',
  ],
  feel: 'The toe of the club is a needle: it points up, down at the ball, and up again.',
  ladder: ladder({
    rehearsal: 'Toe up, and toe up again.',
    brush: 'Toe up, a brush at the ball spot, and toe up again.',
    'hip-high': 'Hands together: the ball did not curve to the {trail}.',
  }),
  overCorrection: 'Balls that curve to the {lead}: the face turns now. Close the gap between the hands.',
  exaggerations: [
    { level: 'mild', how: 'A small gap.', setting: 'one ball diameter (4 cm) between the hands' },
    { level: 'firm', how: 'A larger gap.', setting: 'two ball diameters (8 cm) between the hands' },
  ],
  dose: 'Two blocks of ten with the gap, one without, three days a week.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, slowSentence, wristSentence],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source',
};
