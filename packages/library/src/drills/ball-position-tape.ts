import { everyDrill } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

const heelLine = tape(
  'tape from the ball to your heels',
  { xMm: 0, yMm: -450 },
  { rotationDeg: 90, lengthMm: 700 },
);
const heelMark = tape('tape where the {lead} heel stands', { xMm: 107, yMm: -800 }, { lengthMm: 200 });

export const ballPositionTape: Drill = {
  id: 'ball-position-tape',
  name: 'Ball-position tape',
  version: 1,
  purpose: 'Puts ball and feet in the same place every time. No ball is struck until they are.',
  causes: ['ball-too-far-forward', 'ball-too-far-back', 'stance-width'],
  stations: stations({
    needs: ['tape', 'mirror'],
    objects: [heelLine, heelMark],
    feet: { ballInsideLeadHeelMm: 107 },
    steps: [
      'Stick tape from the ball towards your heels, and a second one where your {lead} heel stands.',
      'With a mid-iron the ball lies two to three ball diameters (9 to 13 cm) inside that heel, under your {lead} ear; a driver half a ball to a ball (0 to 5 cm).',
      'Heels about as far apart as your shoulders are wide.',
    ],
    at: { grass: { lastRung: 'brush' }, mat: { lastRung: 'brush' } },
  }),
  steps: [
    'Walk in from behind the ball and set up in your usual time.',
    'Look down: heel on its tape, ball on the line.',
    'Take the picture, then check it against the tape.',
    'Step away and begin again.',
  ],
  feel: 'The ball lies on its railway line, your shoe stands at the station.',
  ladder: ladder({
    rehearsal: {
      clean: 'Heel and ball on their tape, seen on the picture or in the mirror.',
      balls: 5,
      allOf: 5,
      speedPercent: 0,
    },
    brush: { clean: 'Heel and ball on their tape, then a slow brush.', balls: 5, allOf: 5 },
  }),
  overCorrection: 'None to expect: it is a place, not a move.',
  exaggerations: [
    { level: 'mild', how: 'The tape as it is.', setting: 'two to three ball diameters inside the heel' },
  ],
  dose: 'Five set-ups, twice a day, five days a week.',
  minutes: 10,
  ballsAtMost: 20,
  cautions: [...everyDrill],
  notWith: [],
  source: 'common practice, no source',
};
