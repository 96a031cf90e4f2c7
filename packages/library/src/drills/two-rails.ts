import { swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stick, tape } from './objects.ts';
import { stations } from './stations.ts';

/** Seventy centimetres apart and 30 cm clear of the path of the club. */
const rails = [
  stick('stick beyond the ball', { xMm: 0, yMm: 335 }),
  stick('stick before your toes', { xMm: -115, yMm: -370 }),
];
const tapes = [
  tape('tape beyond the ball', { xMm: 0, yMm: 335 }, { lengthMm: 800 }),
  tape('tape before your toes', { xMm: -115, yMm: -370 }, { lengthMm: 800 }),
];

export const twoRails: Drill = {
  id: 'two-rails',
  name: 'Two rails',
  version: 1,
  purpose: 'Sets feet and shoulders along the line, where you can see it.',
  causes: ['alignment', 'ball-too-far-back', 'in-to-out'],
  stations: stations({
    needs: ['stick'],
    objects: rails,
    steps: [
      'Both lie flat and point along the target line, nearly three grip lengths (70 cm) apart; the ball lies between them, a good grip length (30 cm) from each.',
      'Look along the far one from behind before you begin.',
    ],
    at: {
      grass: { steps: ['Lay two sticks or spare clubs flat on the ground.'] },
      mat: { steps: ['Lay two sticks or spare clubs flat on the mat.'] },
      home: { needs: ['tape'], objects: tapes, steps: ['Stick two tapes on the floor.'] },
    },
  }),
  steps: [
    'Set your feet along the near rail.',
    'Lay a club across your shoulders: it points along the rails too.',
    'Swing; every third ball step away and set up anew.',
    'Watch where the ball starts.',
  ],
  feel: 'You stand on a railway platform, the ball waits on the track.',
  ladder: ladder({
    rehearsal: 'Feet and shoulders along the rails, checked from behind.',
    brush: 'Set up along the rails, then a brush at the ball spot or past it.',
    'hip-high': 'Set up along the rails, and the ball started at the target.',
    'three-quarter': 'Set up along the rails, and the ball started at the target.',
    full: 'Set up without rails, checked with a club on the ground: feet along the line.',
  }),
  overCorrection: 'You may feel that you aim to one side for a week: trust the rails.',
  exaggerations: [{ level: 'mild', how: 'The rails as they are.', setting: 'both along the target line' }],
  dose: 'Twenty balls, three days a week, every third set up anew.',
  minutes: 15,
  ballsAtMost: 45,
  cautions: [...swingCautions],
  notWith: [],
  source: 'common practice, no source',
};
