import { swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const faceStrikeSpots: Drill = {
  id: 'face-strike-spots',
  name: 'Strike spots',
  version: 1,
  purpose: 'Teaches you to feel where on the face the ball is struck.',
  causes: ['too-far-bent-over', 'radius-change', 'tee-too-high'],
  stations: stations({
    needs: ['pen'],
    steps: [
      'Cover the face with tape or colour it with a dry-wipe pen.',
      'Wipe it after every ball, and say where you felt it before you look.',
    ],
    at: {
      home: {
        needs: ['pen', 'tape'],
        steps: ['Lay a rolled-up sock where the ball would be and strike it softly onto the rug.'],
        lastRung: 'brush',
      },
    },
  }),
  steps: [
    'Five from the toe on purpose, five from the heel, then five from the middle.',
    'Say where it was, then look.',
    'Change nothing but the distance that the club keeps from you.',
    'Count the middle ones of the last five.',
  ],
  feel: 'You stamp a letter: toe, heel, middle.',
  ladder: ladder({
    rehearsal: 'Slowly: the part of the face you named stopped behind the ball spot.',
    brush: 'The part of the face you named passed over the ball spot.',
    'hip-high': 'Struck where you said you would.',
    'three-quarter': 'Struck where you said you would.',
    full: 'Struck off the middle.',
  }),
  overCorrection:
    'The opposite side of the face for a while: you have learned to move it. Carry on to the middle.',
  exaggerations: [
    { level: 'mild', how: 'Middle only.', setting: 'within a ball diameter of the middle' },
    { level: 'firm', how: 'Toe, heel, middle.', setting: 'each within a ball diameter of where you said' },
  ],
  dose: 'Fifteen balls, three days a week.',
  minutes: 15,
  ballsAtMost: 45,
  cautions: [...swingCautions],
  notWith: [],
  source: 'common practice, no source',
};
