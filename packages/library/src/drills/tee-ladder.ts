import { swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tee } from './objects.ts';
import { stations } from './stations.ts';

export const teeLadder: Drill = {
  id: 'tee-ladder',
  name: 'Tee ladder',
  version: 1,
  purpose: 'Finds the height of the tee at which you strike the middle of the face.',
  causes: ['tee-too-high'],
  stations: stations({
    needs: ['tees', 'pen'],
    objects: [tee('tee under the ball', { xMm: 0, yMm: 0 })],
    steps: [
      'Three heights: a third of the ball above the club on the ground, half of it, and just the ball off the grass.',
      'Colour the face with a dry-wipe pen, five balls at each height.',
    ],
    at: {
      home: {
        needs: ['tees', 'mirror'],
        steps: ['Only look: sole the club beside a teed ball and compare.'],
        lastRung: 'rehearsal',
      },
      mat: { steps: ['Use the rubber tee of the mat, or none where it cannot be changed.'] },
    },
  }),
  steps: [
    'Sole the club beside the tee: how much of the ball shows above it?',
    'Swing level, as if to sweep the ball off the tee.',
    'Note how high on the face it was struck.',
    'Keep the height with most strikes in the middle.',
  ],
  feel: 'You sweep the ball off a shelf and leave the tee standing.',
  ladder: ladder({
    rehearsal: 'Half of the ball, no more, shows above the club.',
    brush: 'The club passed over the tee without touching the ground before it.',
    'hip-high': 'Struck off the middle of the face, the tee still standing.',
    'three-quarter': 'Struck off the middle of the face.',
    full: 'Struck off the middle of the face, with your own rhythm.',
  }),
  overCorrection: 'Low, thin balls: half a finger higher again.',
  exaggerations: [
    { level: 'mild', how: 'Half a ball above the club.', setting: 'half of the ball above the club' },
    { level: 'firm', how: 'A third above the club.', setting: 'a third of the ball above the club' },
  ],
  dose: 'Fifteen balls, twice a week.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions],
  notWith: [],
  source: 'common practice, no source',
};
