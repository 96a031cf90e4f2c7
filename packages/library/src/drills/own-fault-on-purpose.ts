import { easyTurnSentence, slowSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

const line = tape('tape on the ball line', { xMm: 0, yMm: -650 }, { rotationDeg: 90, lengthMm: 500 });

export const ownFaultOnPurpose: Drill = {
  id: 'own-fault-on-purpose',
  name: 'Your fault on purpose',
  version: 1,
  purpose: 'Lets you feel the drift by overdoing it, and so find its opposite.',
  causes: ['sway-away', 'hang-back'],
  stations: stations({
    needs: ['tape', 'mirror'],
    objects: [line],
    steps: [
      'Stick tape on the ball line between your feet.',
      'Slow swings only, in front of a mirror or a phone on a stand.',
    ],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Three slow swings in which you drift away from the target, or stay there, more than ever.',
    'Three in which you do the opposite.',
    'Three as you now think is right; look at the film.',
    'Rest a minute and do it once more.',
  ],
  feel: 'The buckle paints a line on the wall: too far, too far the other way, right.',
  ladder: ladder({
    rehearsal: {
      clean:
        'On film the three kinds can be told apart, and the last three end with the buckle past the tape.',
      balls: 9,
      filmed: true,
    },
    brush: 'The last three brush at the ball spot or past it.',
    'hip-high': 'Ball first with the buckle past the tape at the finish.',
  }),
  overCorrection: 'You overdo the opposite for some days: it fades.',
  exaggerations: [{ level: 'mild', how: 'Clearly.', setting: 'as far as you can see in a mirror' }],
  dose: 'Two sets of nine, twice a week.',
  minutes: 10,
  ballsAtMost: 30,
  cautions: [...swingCautions, slowSentence, easyTurnSentence],
  notWith: ['low-back-pain', 'hip-pain', 'knee-pain'],
  source: 'error amplification: Milanese et al. 2016; the steps are common practice, no source',
};
