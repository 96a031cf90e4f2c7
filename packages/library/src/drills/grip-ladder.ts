import { swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const gripLadder: Drill = {
  id: 'grip-ladder',
  name: 'Grip ladder',
  version: 1,
  purpose: 'Finds the smallest turn of your {lead} hand that takes away half of the curve.',
  causes: ['weak-grip', 'strong-grip', 'closed-face'],
  stations: stations({
    needs: ['mirror'],
    steps: [
      'Three grips: two knuckles of the {lead} hand in view, two and a half, three.',
      'Five swings with each, from the smallest change to the largest; note start and curve.',
    ],
    at: {
      home: { steps: ['Look in the mirror at each grip for as long as one breath.'], lastRung: 'brush' },
    },
  }),
  steps: [
    'Take the grip anew for every swing: club on the ground, then the {lead} hand, then the other.',
    'Count the knuckles you see from above.',
    'Swing and note where the ball started and how it curved.',
    'Keep the smallest change that halves the curve.',
  ],
  feel: 'The logo of your glove looks a little more at the sky, or a little less.',
  ladder: ladder({
    rehearsal: { clean: 'The grip taken anew, the wanted number of knuckles in view.', balls: 10 },
    brush: 'The wanted grip before and after the brush.',
    'hip-high': 'The wanted grip, and the ball curved less than half of before.',
    'three-quarter': 'The wanted grip, and the ball curved less than half of before.',
    full: 'The wanted grip, and the ball curved less than half of before.',
  }),
  overCorrection: 'The opposite curve: go back half a knuckle.',
  exaggerations: [
    { level: 'mild', how: 'Half a knuckle.', setting: 'half a knuckle from your own grip' },
    { level: 'firm', how: 'A whole knuckle.', setting: 'one knuckle from your own grip' },
  ],
  dose: 'Fifteen balls, three days a week, and ten grips a day at home.',
  minutes: 15,
  ballsAtMost: 45,
  cautions: [...swingCautions],
  notWith: ['wrist-pain'],
  source: 'common practice, no source',
};
