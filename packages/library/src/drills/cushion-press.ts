import { slowSentence, swingCautions, wristSentence } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { cushion } from './objects.ts';
import { stations } from './stations.ts';

/** Stands before the lead foot; the club is pressed into it, never swung at it. */
const target = cushion(
  'cushion, standing against a soft bag',
  { xMm: 200, yMm: -40 },
  { lengthMm: 150, widthMm: 400, heightMm: 400 },
);

export const cushionPress: Drill = {
  id: 'cushion-press',
  name: 'Cushion press',
  version: 1,
  purpose: 'Lets you feel the place where the ball is struck: handle first, belt turned.',
  causes: ['flip', 'stalled-turn', 'slide-without-turn'],
  stations: stations({
    needs: ['cushion', 'bag'],
    objects: [target],
    steps: [
      'Lean a thick cushion against a soft bag, half a grip length (15 cm) ahead of the ball spot.',
      'No ball while the cushion stands there; take it away for the balls.',
    ],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Take the club back knee high.',
    'Bring it slowly to the cushion and press, as you would close a drawer.',
    'Hold for three seconds: the handle is ahead of the clubhead, the belt buckle looks past the ball.',
    'Let go, breathe, begin again.',
  ],
  feel: 'You push a heavy drawer shut with the clubhead while your buckle turns to the window.',
  ladder: ladder({
    rehearsal: { clean: 'Pressed for three seconds, the handle ahead of the clubhead.', balls: 6 },
    brush: 'Without the cushion: a brush at the ball spot or past it, then held as if it stood there.',
    'hip-high': 'Without the cushion: ball first, stopped with the handle ahead.',
  }),
  overCorrection: 'You chop down and dig: press forward, along the ground.',
  exaggerations: [
    { level: 'mild', how: 'A light press.', setting: 'as if to close a drawer' },
    { level: 'firm', how: 'A longer press.', setting: 'held for five seconds' },
  ],
  dose: 'Two blocks of six presses, then ten balls without the cushion, three days a week.',
  minutes: 10,
  ballsAtMost: 30,
  cautions: [...swingCautions, slowSentence, wristSentence],
  notWith: ['wrist-pain', 'elbow-pain', 'shoulder-pain'],
  source: 'common practice, no source',
};
