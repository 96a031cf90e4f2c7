import { swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape, tee } from './objects.ts';
import { stations } from './stations.ts';

/** Ten centimetres ahead of the ball: where the club shall still be low. */
const ahead = { xMm: 100, yMm: 0 };

export const forwardTee: Drill = {
  id: 'forward-tee',
  name: 'Forward tee',
  version: 1,
  purpose: 'Lets the club reach the ground ahead of the ball, not behind it.',
  causes: ['hang-back', 'upper-body-lunge', 'ball-too-far-forward'],
  stations: stations({
    needs: ['tees'],
    objects: [tee('tee, pressed in flush', ahead)],
    steps: [
      'Stand with the ball two ball diameters (about 9 cm) inside your {lead} heel.',
      'The club meets the ball first and then brushes what lies ahead of it.',
    ],
    at: {
      grass: {
        steps: [
          'Press a tee into the ground until it is flush, two and a half ball diameters (10 cm) ahead of the ball.',
        ],
      },
      mat: {
        needs: ['tape'],
        objects: [tape('tape, one layer', ahead, { rotationDeg: 90, lengthMm: 200 })],
        steps: [
          'Stick one layer of tape across the mat, two and a half ball diameters (10 cm) ahead of the ball.',
        ],
      },
      home: {
        needs: ['tape'],
        objects: [tape('tape, one layer', ahead, { rotationDeg: 90, lengthMm: 200 })],
        steps: [
          'Stick one layer of tape across the rug, two and a half ball diameters (10 cm) ahead of where a ball would lie.',
        ],
      },
    },
  }),
  steps: [
    'Look at the tee ahead, not at the ball.',
    'Swing back to hip height and through to hip height.',
    'Let the club brush the tee or the tape after the ball.',
    'Look: was it touched, and where did the mark begin?',
  ],
  feel: 'You sweep the tee towards the target.',
  ladder: ladder({
    rehearsal: 'Slowly, without touching: the club is lowest over the tee.',
    brush: 'The brush begins at the ball spot or past it and reaches the tee.',
    'hip-high': 'Ball first, and the tee or tape was touched.',
    'three-quarter': 'Ball first, and the tee or tape was touched.',
    full: 'Ball first, the mark reaches the tee, with your own rhythm.',
  }),
  overCorrection:
    'Low balls and a steep, deep mark ahead of the ball: the low point has moved. Carry on, and brush more shallowly.',
  exaggerations: [
    { level: 'mild', how: 'The tee close.', setting: 'one and a half ball diameters (6 cm) ahead' },
    { level: 'firm', how: 'The tee farther ahead.', setting: 'two and a half ball diameters (10 cm) ahead' },
    {
      level: 'strong',
      how: 'The tee far ahead, slow swings only.',
      setting: 'four ball diameters (17 cm) ahead',
      notFor: ['junior', 'senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...swingCautions],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source',
};
