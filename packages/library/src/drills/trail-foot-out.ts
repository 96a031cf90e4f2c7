import { easyTurnSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const trailFootOut: Drill = {
  id: 'trail-foot-out',
  name: 'Back foot turned out',
  version: 1,
  purpose: 'Gives your turn room, so that you need not drift.',
  causes: ['sway-away', 'under-turn'],
  stations: stations({
    feet: { trailOutDeg: 18 },
    steps: [
      'Turn the toes of your {trail} foot out by the width of two fingers (15 to 20 degrees).',
      'Keep that knee as bent as it is when you stand ready.',
    ],
    at: { grass: { lastRung: 'three-quarter' } },
  }),
  steps: [
    'Set up with the foot turned out.',
    'Turn back slowly until your back looks at the target as far as is easy.',
    'Look down: the {trail} trouser crease has not moved sideways.',
    'Swing through.',
  ],
  feel: 'You turn in a barrel that just fits.',
  ladder: ladder({
    rehearsal: 'Turned, and the trouser crease stayed where it was.',
    brush: 'Turned, the crease stayed, brush at the ball spot or past it.',
    'hip-high': 'Ball first, the crease stayed.',
    'three-quarter': {
      clean: 'On film the belt stayed within a shoe of where it began, and the ball was struck first.',
      filmed: true,
    },
  }),
  overCorrection: 'You turn too little, for fear of drifting: as far as is easy, not less.',
  exaggerations: [
    { level: 'mild', how: 'A little out.', setting: 'two fingers (15 degrees)' },
    { level: 'firm', how: 'A little more.', setting: 'three fingers (20 degrees)' },
  ],
  dose: 'Ten slow turns and ten half swings, three days a week.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, easyTurnSentence],
  notWith: ['knee-pain', 'hip-pain', 'low-back-pain'],
  source: 'common practice, no source',
};
