import { askFirstSentence, easyTurnSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { stations } from './stations.ts';

export const clubAcrossShoulders: Drill = {
  id: 'club-across-shoulders',
  name: 'Club across the shoulders',
  version: 1,
  purpose: 'Shows you how far you turn, and over which foot.',
  causes: ['under-turn', 'reverse-tilt'],
  stations: stations({
    needs: ['mirror'],
    steps: ['Lay the club across your shoulders, hands crossed over it.', 'No ball while it lies there.'],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Bow from the hips as to a ball.',
    'Turn until the end of the club points at the ground just beyond the ball spot, as far as is easy.',
    'Your shirt buttons are over the {trail} knee; turn back and through.',
    'Take the club in your hands and make the same turn.',
  ],
  feel: 'The end of the club looks over the ball, like someone over a fence.',
  ladder: ladder({
    rehearsal: 'The end of the club pointed past the ball spot, buttons over the {trail} knee.',
    brush: 'The same turn with the club in your hands, brush at the ball spot or past it.',
    'hip-high': 'The same turn, and the ball struck cleanly.',
  }),
  overCorrection: 'You lean towards the target instead of turning: buttons over the {trail} knee.',
  exaggerations: [
    { level: 'mild', how: 'As far as is easy.', setting: 'end of the club at the ball line' },
    {
      level: 'firm',
      how: 'A little farther, if it is easy.',
      setting: 'end of the club just beyond the ball line',
    },
  ],
  dose: 'Ten a day, five days a week.',
  minutes: 10,
  ballsAtMost: 30,
  cautions: [...swingCautions, easyTurnSentence, askFirstSentence],
  notWith: ['low-back-pain', 'shoulder-pain', 'neck-pain'],
  source: 'common practice, no source',
};
