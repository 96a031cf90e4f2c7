import { softOnlySentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { cushion } from './objects.ts';
import { stations } from './stations.ts';

/** Its near edge 10 cm inside the ball and a good grip length behind it: a club from far inside meets it. */
const inside = cushion('headcover, 10 cm inside', { xMm: -390, yMm: -181 });

export const coverInside: Drill = {
  id: 'cover-inside',
  name: 'Cover inside',
  version: 1,
  purpose: 'Shows you when the club comes too far from behind you.',
  causes: ['in-to-out', 'inside-takeaway'],
  stations: stations({
    needs: ['cushion'],
    objects: [inside],
    steps: [
      'Lay a soft headcover two and a half ball diameters (10 cm) inside the ball line and a grip length (26 cm) behind the ball.',
      'Only something soft lies there.',
    ],
    at: { grass: { steps: ['Aim at something small and far away.'] } },
  }),
  steps: [
    'Set up with feet and shoulders along the target line.',
    'Begin the way back outside the cover.',
    'Come down outside it too, the club in front of your shirt buttons.',
    'If you touched it, put it back and make one slow swing without a ball.',
  ],
  feel: 'The clubhead runs along the rail of the target line, past the cover.',
  ladder: ladder({
    rehearsal: 'Slowly past the cover, back and down, untouched.',
    brush: 'Cover untouched, brush at the ball spot or past it.',
    'hip-high': 'Cover untouched, and the ball started at the target.',
    'three-quarter': 'Cover untouched, and the ball started at the target.',
    full: 'No cover now: the ball started at the target.',
  }),
  overCorrection:
    'Balls that curve to the {trail}: the path has changed. Carry on, then move the cover away.',
  exaggerations: [
    { level: 'mild', how: 'The cover far in.', setting: 'four ball diameters (17 cm) inside' },
    { level: 'firm', how: 'The cover closer.', setting: 'two and a half ball diameters (10 cm) inside' },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...swingCautions, softOnlySentence],
  notWith: [],
  source: 'common practice, no source',
};
