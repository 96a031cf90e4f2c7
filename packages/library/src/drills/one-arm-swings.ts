import { slowSentence, swingCautions, wristSentence } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const oneArmSwings: Drill = {
  id: 'one-arm-swings',
  name: 'One-arm swings',
  version: 1,
  purpose: 'Keeps the {lead} arm long and lets the club swing late.',
  causes: ['lead-arm-bend', 'thrown-early'],
  stations: stations({
    steps: [
      'Hold a short iron with the {lead} hand only, half-way down the grip; the other hand lies on your pocket.',
      'Tee the ball low, or swing without one.',
    ],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Swing back no higher than the belt.',
    'Let the club fall and swing through; the sleeve stays long.',
    'Five, then rest as long as five took.',
    'Take both hands and make the same swing.',
  ],
  feel: 'The club is a pendulum on a long sleeve.',
  ladder: ladder({
    rehearsal: { clean: 'Belt to belt, the sleeve long, without a jerk.', balls: 5 },
    brush: { clean: 'A light brush at the ball spot or past it.', balls: 5 },
    'hip-high': { clean: 'Both hands: ball first, the sleeve long until the shaft is level.', balls: 10 },
  }),
  overCorrection: 'The club drags and the ball starts to the {trail}: take both hands more often.',
  exaggerations: [
    { level: 'mild', how: 'Knee to knee.', setting: 'no higher than the knee' },
    { level: 'firm', how: 'Belt to belt.', setting: 'no higher than the belt', notFor: ['junior', 'senior'] },
  ],
  dose: 'Two sets of five a day, two days a week, never more.',
  minutes: 10,
  ballsAtMost: 30,
  cautions: [...swingCautions, slowSentence, wristSentence],
  notWith: ['wrist-pain', 'elbow-pain', 'shoulder-pain', 'neck-pain'],
  source: 'common practice, no source',
};
