import { askFirstSentence, levelGroundSentence, standSafelySentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const leadFootDownhill: Drill = {
  id: 'lead-foot-downhill',
  name: 'Front foot downhill',
  version: 1,
  purpose: 'Lets the slope take you onto your {lead} foot.',
  causes: ['hang-back'],
  stations: stations({
    steps: ['Hip height to hip height, slowly.', 'Stand so that you could stop at any moment.'],
    at: {
      grass: {
        needs: ['slope'],
        lastRung: 'hip-high',
        steps: [
          'Find a gentle slope, no steeper than a wheelchair ramp, dry, and stand with the {lead} foot lower.',
        ],
      },
      mat: {
        needs: ['towel'],
        steps: ['Fold a towel to two fingers (3 cm) and stand on it with the whole {trail} foot.'],
      },
      home: {
        needs: ['towel'],
        steps: ['Fold a towel to two fingers (3 cm) and stand on it with the whole {trail} foot.'],
      },
    },
  }),
  steps: [
    'Set up and let your shirt follow the slope.',
    'Swing back to hip height.',
    'Let yourself roll onto the {lead} foot and brush down the slope.',
    'Stand for three seconds, then walk one step down.',
  ],
  feel: 'A ball would roll from under you towards the target, and you roll with it.',
  ladder: ladder({
    rehearsal: 'You ended on the {lead} foot and stood for three seconds.',
    brush: 'Brush at the ball spot or past it, and you stood for three seconds.',
    'hip-high': 'Ball first, and you stood for three seconds.',
  }),
  overCorrection: 'You run down the slope ahead of the ball: a flatter place, and slower.',
  exaggerations: [
    { level: 'mild', how: 'Hardly a slope.', setting: 'you barely see it' },
    {
      level: 'firm',
      how: 'A gentle slope.',
      setting: 'no steeper than a wheelchair ramp',
      notFor: ['senior'],
    },
  ],
  dose: 'Two blocks of ten, three days a week.',
  minutes: 10,
  ballsAtMost: 30,
  cautions: [...swingCautions, askFirstSentence, levelGroundSentence, standSafelySentence],
  notWith: ['hip-pain', 'knee-pain', 'low-back-pain'],
  source: 'common practice, no source',
};
