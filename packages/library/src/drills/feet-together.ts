import { levelGroundSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const feetTogether: Drill = {
  id: 'feet-together',
  name: 'Feet together',
  version: 1,
  purpose: 'Lets you feel a swing that stays over itself: who drifts, stumbles.',
  causes: [
    'sway-away',
    'slide-without-turn',
    'rushed',
    'stance-width',
    'grip-tension',
    'upper-body-lunge',
    'in-to-out',
  ],
  stations: stations({
    feet: { stanceMm: 150, ballInsideLeadHeelMm: 75 },
    steps: [
      'Set your heels one ball diameter (5 cm) apart, the ball in front of the middle.',
      'Swing from hip height to hip height, no longer.',
    ],
    at: { grass: { lastRung: 'hip-high', steps: ['Choose level, dry ground.'] } },
  }),
  steps: [
    'Set up, and feel the ground under both shoes.',
    'Swing back to hip height and through to hip height.',
    'Hold the finish for three seconds without a step.',
    'After ten, stand as usual for two and look for the same quiet.',
  ],
  feel: 'The club swings round a pole that stands still.',
  ladder: ladder({
    rehearsal: 'No step and no wobble, finish held for three seconds.',
    brush: 'The ground brushed, no step, finish held for three seconds.',
    'hip-high': 'Ball struck cleanly, no step, finish held for three seconds.',
  }),
  overCorrection:
    'The turn becomes short and the ball weak: stand normally for two of every ten and turn fully.',
  exaggerations: [
    { level: 'mild', how: 'Heels apart.', setting: 'heels a shoe (10 cm) apart' },
    { level: 'firm', how: 'Heels close.', setting: 'heels one ball diameter (5 cm) apart' },
    {
      level: 'strong',
      how: 'Heels touching, without a ball.',
      setting: 'heels together, slow swings only',
      notFor: ['senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, levelGroundSentence],
  notWith: [],
  source: 'common practice, no source',
};
