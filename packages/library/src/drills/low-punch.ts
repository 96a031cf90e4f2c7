import { swingCautions, wristSentence } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

const ballBack = tape(
  'tape, ball half a diameter back',
  { xMm: 0, yMm: -330 },
  { rotationDeg: 90, lengthMm: 240 },
);

export const lowPunch: Drill = {
  id: 'low-punch',
  name: 'Low punch',
  version: 1,
  purpose: 'Lets the handle reach the ball before the clubhead does, and keeps the arms long.',
  causes: ['flip', 'lead-arm-bend', 'handle-back', 'over-rolled'],
  stations: stations({
    needs: ['tape'],
    objects: [ballBack],
    feet: { ballInsideLeadHeelMm: 105 },
    steps: [
      'Play the ball half a ball diameter (2 cm) farther back than usual.',
      'Swing from hip height to hip height and stop there.',
    ],
    at: {
      grass: {
        steps: ['Lay tape on the line from the ball towards your feet, so that you find the spot again.'],
      },
    },
  }),
  steps: [
    'Set the handle before the inside of your {lead} thigh.',
    'Swing back until the shaft is level.',
    'Strike and stop with the shaft low, no higher than your belt.',
    'Look at the stop: the shaft points at the target and is one line with your {lead} sleeve.',
  ],
  feel: 'The ball flies below a washing line that hangs at the height of your shirt pocket.',
  ladder: ladder({
    rehearsal: 'Stopped below the belt, shaft and {lead} sleeve in one line.',
    brush: 'A brush at the ball spot or past it, stopped below the belt.',
    'hip-high': 'The ball flew lower than your shirt pocket, and you stopped with the shaft low.',
    'three-quarter': 'The ball flew low and straight, and you stopped at belt height.',
    full: 'Ball first with your own rhythm and a full finish.',
  }),
  overCorrection:
    'Low balls that curve to the {lead} side: the handle leads less, the face stays square. Carry on.',
  exaggerations: [
    { level: 'mild', how: 'Stop at belt height.', setting: 'finish no higher than the belt' },
    { level: 'firm', how: 'Stop at knee height.', setting: 'finish no higher than the knee' },
    {
      level: 'strong',
      how: 'Ball a diameter farther back, stop at knee height.',
      setting: 'ball one diameter (4 cm) back, hip-high only',
      notFor: ['junior', 'senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...swingCautions, wristSentence],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source',
};
