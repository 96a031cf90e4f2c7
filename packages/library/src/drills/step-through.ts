import { askFirstSentence, levelGroundSentence, standSafelySentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

const line = tape('tape on the ball line', { xMm: 0, yMm: -620 }, { rotationDeg: 90, lengthMm: 400 });

export const stepThrough: Drill = {
  id: 'step-through',
  name: 'Step through',
  version: 1,
  purpose: 'Takes you onto your {lead} foot before the club comes down, and keeps you turning.',
  causes: ['hang-back', 'stalled-turn'],
  stations: stations({
    needs: ['tape'],
    objects: [line],
    feet: { stanceMm: 250 },
    steps: [
      'Stand with your feet a shoe apart, the ball line marked between them.',
      'Leave one step free on the target side, nothing to trip over.',
    ],
    at: { grass: { steps: ['Choose level, dry ground.'] } },
  }),
  steps: [
    'Swing back to hip height.',
    'Just before the club turns round, step towards the target with your {lead} foot.',
    'Swing through and let the {trail} foot walk after the ball.',
    'Stand on the {lead} foot for three seconds.',
  ],
  feel: 'You walk after your ball before it has landed.',
  ladder: ladder({
    rehearsal: 'The step comes before the club turns, and you stand for three seconds.',
    brush: 'Step first, brush at the ball spot or past it, and you stand for three seconds.',
    'hip-high': 'Step first, ball first, and you stand for three seconds.',
    'three-quarter': 'Ball first, and the {trail} foot walks through on its own.',
  }),
  overCorrection:
    'You run ahead of the ball and top it: the step is early and small, the collar of your shirt stays behind the ball.',
  exaggerations: [
    { level: 'mild', how: 'A half step.', setting: 'half a shoe towards the target' },
    { level: 'firm', how: 'A whole step.', setting: 'one shoe towards the target' },
    {
      level: 'strong',
      how: 'A step, and walk on after the ball.',
      setting: 'one shoe, then two paces',
      notFor: ['senior'],
    },
  ],
  dose: 'Two blocks of ten with a minute between them, three days a week.',
  minutes: 15,
  ballsAtMost: 40,
  cautions: [...swingCautions, askFirstSentence, standSafelySentence, levelGroundSentence],
  notWith: ['hip-pain', 'knee-pain', 'low-back-pain'],
  source: 'common practice, no source',
};
