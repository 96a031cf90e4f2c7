import { easyTurnSentence, slowSentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { bag } from './objects.ts';
import { stations } from './stations.ts';

/** A hand's width beside the trail hip and behind the toes, far from the path of the club. */
const beside = bag('bag, soft side towards you', { xMm: -620, yMm: -820 }, { heightMm: 850 });

export const cushionAtHip: Drill = {
  id: 'cushion-at-hip',
  name: 'Bag beside the hip',
  version: 1,
  purpose: 'Shows you at once when you drift away from the target on the way back.',
  causes: ['sway-away'],
  stations: stations({
    needs: ['bag'],
    objects: [beside],
    steps: [
      'Stand your bag beside you on the {trail} side, its soft side one ball diameter (5 cm) from your hip and behind the line of your toes.',
      'Swing no longer than hip height and slowly: the club never comes near the bag.',
    ],
    at: { grass: { lastRung: 'hip-high' } },
  }),
  steps: [
    'Set up beside the bag without touching it.',
    'Turn back until the shaft is level; the bag stays untouched or is barely brushed.',
    'Swing through to hip height.',
    'If you pushed the bag, set it back and turn once more without a club.',
  ],
  feel: 'The bag feels nothing but your pocket turning past it.',
  ladder: ladder({
    rehearsal: 'Turned back and through, the bag not pushed.',
    brush: 'The ground brushed at the ball spot or past it, the bag not pushed.',
    'hip-high': 'Ball first, the bag not pushed.',
  }),
  overCorrection:
    'You hardly turn at all, to spare the bag: let your pocket turn behind you, only not sideways.',
  exaggerations: [
    { level: 'mild', how: 'The bag a shoe away.', setting: 'two ball diameters (9 cm) from the hip' },
    { level: 'firm', how: 'The bag close.', setting: 'one ball diameter (5 cm) from the hip' },
    {
      level: 'strong',
      how: 'The bag touching, without a ball.',
      setting: 'touching at the start, slow swings only',
      notFor: ['senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, slowSentence, easyTurnSentence],
  notWith: ['low-back-pain'],
  source: 'common practice, no source',
};
