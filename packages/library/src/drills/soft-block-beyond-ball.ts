import { softOnlySentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { cushion } from './objects.ts';
import { stations } from './stations.ts';

/** Its near edge 3 cm beyond the toe of the club at address. */
const block = cushion('soft cover beyond the toe', { xMm: 0, yMm: 145 });

export const softBlockBeyondBall: Drill = {
  id: 'soft-block-beyond-ball',
  name: 'Soft block beyond the ball',
  version: 1,
  purpose: 'Shows you when you and the club come closer to the ball on the way down.',
  causes: ['too-close-upright', 'hips-toward-ball', 'weight-on-toes'],
  stations: stations({
    needs: ['cushion'],
    objects: [block],
    steps: [
      'Sole the club behind the ball and lay a soft cover a thumb’s length (3 cm) beyond its toe.',
      'Soft only: foam, a cushion, a headcover, never wood or a box.',
    ],
    at: { grass: { steps: ['Choose level ground.'] } },
  }),
  steps: [
    'Set up with your weight on the laces of your shoes.',
    'Swing from hip height to hip height past the cover.',
    'If the cover moved, the club came out: put it back and swing slower.',
    'Look where on the face the ball was struck.',
  ],
  feel: 'The toe of the club strokes past the cover as a train past a platform.',
  ladder: ladder({
    rehearsal: 'Slowly past the cover, untouched.',
    brush: 'Cover untouched, brush at the ball spot or past it.',
    'hip-high': 'Cover untouched and the ball struck off the middle.',
    'three-quarter': 'Cover untouched and the ball struck off the middle.',
    full: 'No cover now: the ball struck off the middle.',
  }),
  overCorrection:
    'Strikes off the toe: you keep more room than you need. Move the cover a finger away and carry on.',
  exaggerations: [
    { level: 'mild', how: 'The cover farther off.', setting: 'two fingers more (6 cm beyond the toe)' },
    { level: 'firm', how: 'The cover close.', setting: 'a thumb’s length (3 cm) beyond the toe' },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...swingCautions, softOnlySentence],
  notWith: [],
  source: 'common practice, no source',
};
