import { swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const countedRhythm: Drill = {
  id: 'counted-rhythm',
  name: 'Counted rhythm',
  version: 1,
  purpose: 'Gives the way back its time.',
  causes: ['rushed'],
  stations: stations({
    needs: ['phone'],
    steps: [
      'Let the phone tick, or count aloud: one, two, three back; one through.',
      'Film one of three at sixty pictures a second or more.',
    ],
    at: { grass: { steps: ['Choose a beat at which you could say your name between two ticks.'] } },
  }),
  steps: [
    'Count three ticks from the first move to the top.',
    'One tick from the top to the ball.',
    'Keep the count the same for short and long swings.',
    'On film, count the pictures back and down: about three to one.',
  ],
  feel: 'The club waits for the beat, like a child on a swing.',
  ladder: ladder({
    rehearsal: 'Three ticks back, one through, without a hurry at the top.',
    brush: 'Three ticks back, one through, a brush at the ball spot.',
    'hip-high': 'In the count, ball struck cleanly.',
    'three-quarter': {
      clean: 'On film the way back took between two and a half and three and a half times the way down.',
      filmed: true,
    },
    full: {
      clean: 'On film the way back took between two and a half and three and a half times the way down.',
      filmed: true,
    },
  }),
  overCorrection: 'Everything becomes slow: keep the count, raise the beat.',
  exaggerations: [
    { level: 'mild', how: 'Your own beat.', setting: 'three to one' },
    { level: 'firm', how: 'A slower beat.', setting: 'three to one, a fifth slower' },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 10,
  ballsAtMost: 50,
  cautions: [...swingCautions],
  notWith: [],
  source: 'common practice, no source',
};
