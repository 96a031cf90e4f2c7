import { easyTurnSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const pauseAtTop: Drill = {
  id: 'pause-at-top',
  name: 'Pause at the top',
  version: 1,
  purpose: 'Lets the way back end before the way down begins.',
  causes: ['rushed', 'out-to-in', 'reverse-tilt', 'over-long', 'upper-body-lunge'],
  stations: stations({
    needs: ['phone'],
    steps: ['Leave room for a whole swing.', 'Film one of three from the front.'],
  }),
  steps: [
    'Swing back and stop where your {lead} arm is level.',
    'Wait one second: say "now" to yourself.',
    'Begin down with the belt, then let the club follow.',
    'Make two swings without the pause and keep its quiet.',
  ],
  feel: 'The club rests on a shelf for a second before it falls.',
  ladder: ladder({
    rehearsal: 'A pause of a whole second, then down from the belt.',
    brush: 'Pause, then a brush at the ball spot or past it.',
    'hip-high': 'Pause, ball first.',
    'three-quarter': 'Pause, ball first, finish held for two seconds.',
    full: 'No pause now: ball first with its quiet.',
  }),
  overCorrection: 'Weak balls: the pause takes away speed. That is well for now, it comes back.',
  exaggerations: [
    { level: 'mild', how: 'Half a second.', setting: 'as long as a breath in' },
    { level: 'firm', how: 'A second.', setting: 'say "now"' },
    {
      level: 'strong',
      how: 'Two seconds, slow swings only.',
      setting: 'say "now, and go"',
      notFor: ['junior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...swingCautions, easyTurnSentence],
  notWith: ['shoulder-pain'],
  source: 'common practice, no source',
};
