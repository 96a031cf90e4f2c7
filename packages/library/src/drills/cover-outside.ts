import { softOnlySentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { cushion } from './objects.ts';
import { stations } from './stations.ts';

/** Its near edge 10 cm outside the ball and 15 cm behind it: a club from the outside meets it. */
const outside = cushion('headcover, 10 cm outside', { xMm: -275, yMm: 181 });

export const coverOutside: Drill = {
  id: 'cover-outside',
  name: 'Cover outside',
  version: 1,
  purpose: 'Shows you when the club comes down outside the line.',
  causes: ['out-to-in', 'alignment'],
  stations: stations({
    needs: ['cushion'],
    objects: [outside],
    steps: [
      'Lay a soft headcover two and a half ball diameters (10 cm) outside the ball and half a grip length (15 cm) behind it.',
      'Only something soft lies there, never a box or a stick.',
    ],
    at: { grass: { steps: ['Aim at something small and far away.'] } },
  }),
  steps: [
    'Set up with feet and shoulders along the target line.',
    'Swing back to hip height and let the handle fall beside your {trail} pocket.',
    'Swing past the cover without touching it.',
    'If you touched it, put it back and make one slow swing without a ball.',
  ],
  feel: 'The clubhead comes to the ball from the tree on your {trail} side.',
  ladder: ladder({
    rehearsal: 'Slowly past the cover, untouched.',
    brush: 'Cover untouched, brush at the ball spot or past it.',
    'hip-high': 'Cover untouched, and the ball started at the target or a little to the {trail} of it.',
    'three-quarter': 'Cover untouched, and the ball started at the target or a little to the {trail} of it.',
    full: 'No cover now: the ball started at the target or a little to the {trail} of it.',
  }),
  overCorrection:
    'Balls that start to the {trail} or curve to the {lead}: the path has changed. Carry on, then move the cover away.',
  exaggerations: [
    { level: 'mild', how: 'The cover far out.', setting: 'four ball diameters (17 cm) outside' },
    { level: 'firm', how: 'The cover closer.', setting: 'two and a half ball diameters (10 cm) outside' },
    {
      level: 'strong',
      how: 'The cover close, hip-high only.',
      setting: 'two ball diameters (9 cm) outside',
      notFor: ['junior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...swingCautions, softOnlySentence],
  notWith: [],
  source: 'common practice, no source',
};
