import { slowSentence, swingCautions, wristSentence } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const flatWristSet: Drill = {
  id: 'flat-wrist-set',
  name: 'Logo to the sky',
  version: 1,
  purpose: 'Brings the face to the top as it should look.',
  causes: ['open-face'],
  stations: stations({
    needs: ['mirror'],
    steps: [
      'Stand before a mirror, or a phone on a stand behind you.',
      'Slow swings to where your {lead} arm is level.',
    ],
    at: { grass: { lastRung: 'three-quarter' } },
  }),
  steps: [
    'Swing back slowly until the {lead} arm is level and stop.',
    'Let the back of your glove and your sleeve be one flat line; the face looks as the sleeve looks.',
    'Hold for two breaths, without force.',
    'Swing through from there.',
  ],
  feel: 'The logo on your glove lies flat, like a watch you read.',
  ladder: ladder({
    rehearsal: 'In the mirror glove and sleeve are one line and the face looks as they look.',
    brush: 'The stop is right, then a brush at the ball spot or past it.',
    'hip-high': 'The stop is right and the ball did not curve to the {trail}.',
    'three-quarter': {
      clean: 'On film the stop is right, and the ball did not curve to the {trail}.',
      filmed: true,
    },
  }),
  overCorrection: 'Low balls that curve to the {lead}: a little less flat. Carry on.',
  exaggerations: [{ level: 'mild', how: 'Flat.', setting: 'glove and sleeve in one line' }],
  dose: 'Ten a day before the mirror; twenty balls, three days a week.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, slowSentence, wristSentence],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source',
};
