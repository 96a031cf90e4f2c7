import { easyTurnSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const towelUnderArms: Drill = {
  id: 'towel-under-arms',
  name: 'Towel under the arms',
  version: 1,
  purpose: 'Lets arms and body turn together.',
  causes: ['lead-arm-bend', 'under-turn', 'stalled-turn', 'over-long'],
  stations: stations({
    needs: ['towel'],
    steps: [
      'Lay a small towel across your shirt and hold its ends under both arms, lightly.',
      'Hip height to hip height, no longer.',
    ],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Set up with the towel in place.',
    'Turn back until the shaft is level; the towel stays.',
    'Turn through until it is level; the towel still stays.',
    'Take it out and make the same swing.',
  ],
  feel: 'Towel, buckle and club turn like one door.',
  ladder: ladder({
    rehearsal: 'The towel stayed, back and through.',
    brush: 'The towel stayed, brush at the ball spot or past it.',
    'hip-high': 'The towel stayed and the ball was struck cleanly.',
  }),
  overCorrection: 'Short, stiff swings: hold the towel more lightly.',
  exaggerations: [
    { level: 'mild', how: 'The towel under the {lead} arm.', setting: 'one end held' },
    { level: 'firm', how: 'Under both arms.', setting: 'both ends held' },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, easyTurnSentence],
  notWith: ['shoulder-pain'],
  source: 'common practice, no source',
};
