import { easyTurnSentence, freeHeadSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

/** Where the edge of the cap's shadow, or of the mirror image, lies at address. */
const mark = tape('tape at the mark', { xMm: -50, yMm: 480 }, { rotationDeg: 90, lengthMm: 200 });

export const headMark: Drill = {
  id: 'head-mark',
  name: 'Head mark',
  version: 1,
  purpose: 'Shows you whether you drift, tip, sink or rise.',
  causes: ['sway-away', 'reverse-tilt', 'dip', 'lift', 'upper-body-lunge'],
  stations: stations({
    needs: ['tape', 'mirror'],
    objects: [mark],
    steps: [
      'Mark where the edge of your cap is seen when you stand ready.',
      'No ball is struck: you watch the mark.',
    ],
    at: {
      grass: {
        lastRung: 'brush',
        steps: ['With the sun behind you, lay tape where the shadow of your cap’s edge falls.'],
      },
      mat: {
        lastRung: 'brush',
        steps: ['Stick tape on the screen of your phone, or on a mirror, at the edge of your cap.'],
      },
      home: { needs: ['mirror', 'tape'], steps: ['Stick tape on a mirror at the edge of your cap.'] },
    },
  }),
  steps: [
    'Set up and find the edge of the cap on the mark.',
    'Turn back slowly and look: within a ball diameter (about 4 cm) of the mark.',
    'Turn through: the edge may leave the mark once the club has passed the ball spot.',
    'Step away after five and look into the distance.',
  ],
  feel: 'The peak of your cap stays over its mark while the shirt turns below it.',
  ladder: ladder({
    rehearsal:
      'The edge stayed within a ball diameter (about 4 cm) of the mark until the club was back at the ball spot.',
    brush:
      'The ground brushed at the ball spot or past it, the edge within a ball diameter of the mark until then.',
  }),
  overCorrection:
    'Everything freezes and the turn gets small: let the shirt turn as far as is easy below the quiet cap.',
  exaggerations: [
    { level: 'mild', how: 'Two ball diameters are allowed.', setting: 'within 9 cm of the mark' },
    { level: 'firm', how: 'One ball diameter is allowed.', setting: 'within 4 cm of the mark' },
  ],
  dose: 'Two blocks of ten a day, five days a week; a minute is enough.',
  minutes: 10,
  ballsAtMost: 20,
  cautions: [...swingCautions, freeHeadSentence, easyTurnSentence],
  notWith: ['neck-pain'],
  source: 'common practice, no source',
};
