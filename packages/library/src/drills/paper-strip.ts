import { softOnlySentence, swingCautions } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

/** Its near edge a ball diameter and a bit ahead of the ball spot. */
const strip = tape('paper strip, 5 cm wide', { xMm: 75, yMm: 0 }, { lengthMm: 50, widthMm: 250 });

export const paperStrip: Drill = {
  id: 'paper-strip',
  name: 'Paper strip',
  version: 1,
  purpose: 'Lets the club stay low past the ball.',
  causes: ['flip'],
  stations: stations({
    needs: ['tape'],
    objects: [strip],
    steps: [
      'Lay a strip of paper two fingers (5 cm) wide across the line, its near edge a good ball diameter (5 cm) ahead of the ball.',
      'Tape down its far end only.',
    ],
    at: { grass: { steps: ['Wet the paper a little, so that it lies still.'] } },
  }),
  steps: [
    'Set up as to a ball, without one at first.',
    'Swing from hip height to hip height.',
    'Brush through the paper, not before it.',
    'Look: the paper has moved, the ground before it has not.',
  ],
  feel: 'You sweep a letter off the doormat, towards the target.',
  ladder: ladder({
    rehearsal: 'Slowly: the club passes low over the paper.',
    brush: 'The paper moved and the ground before it is untouched.',
    'hip-high': 'Ball first and the paper moved.',
    'three-quarter': 'Ball first and the paper moved.',
  }),
  overCorrection: 'Thin balls: the club is low too late. They are a good sign after fat ones. Carry on.',
  exaggerations: [
    { level: 'mild', how: 'The strip close.', setting: 'near edge half a ball diameter (2 cm) ahead' },
    { level: 'firm', how: 'The strip farther.', setting: 'near edge a good ball diameter (5 cm) ahead' },
    {
      level: 'strong',
      how: 'The strip far ahead, slow swings only.',
      setting: 'near edge two and a half ball diameters (10 cm) ahead',
      notFor: ['junior', 'senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 10,
  ballsAtMost: 40,
  cautions: [...swingCautions, softOnlySentence],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source',
};
