import { swingCautions, wristSentence } from '../cautions.ts';
import type { Drill } from '../types.ts';
import { ladder } from './ladder.ts';
import { tape } from './objects.ts';
import { stations } from './stations.ts';

/** The handle hangs above it when the pump has come down. */
const thigh = tape('tape before the {trail} foot', { xMm: -240, yMm: -430 }, { lengthMm: 200 });

export const pump: Drill = {
  id: 'pump',
  name: 'Pump',
  version: 1,
  purpose: 'Lets the handle come down before the clubhead goes out.',
  causes: ['thrown-early', 'out-to-in', 'hang-back', 'hips-toward-ball'],
  stations: stations({
    needs: ['tape', 'phone'],
    objects: [thigh],
    steps: [
      'Stick tape of three quarters of a grip length (20 cm) before the toes of your {trail} foot.',
      'Put the phone on a stand facing you, belt high, 3 to 4 m away.',
    ],
    at: { grass: { steps: ['Lay the tape flat and press it into the grass.'] } },
  }),
  steps: [
    'Swing back to where your {lead} arm is level and stop.',
    'Let the handle fall towards the tape and take it up again, three times, slowly.',
    'The fourth time swing through to hip height.',
    'Film one of three: was the handle back before your {trail} thigh before the club went out?',
  ],
  feel: 'The handle falls like a bucket into a well; the clubhead follows late.',
  ladder: ladder({
    rehearsal: 'Three pumps, the grip end over the tape each time and the clubhead still above it.',
    brush: 'Three pumps, then a brush at the ball spot or past it.',
    'hip-high': {
      clean:
        'On film the handle was before the {trail} thigh with the shaft level, and the ball was struck first.',
      filmed: true,
    },
    'three-quarter': {
      clean:
        'On film the handle was before the {trail} thigh with the shaft level, and the ball was struck first.',
      filmed: true,
    },
    full: 'No pump now: ball first with your own rhythm.',
  }),
  overCorrection:
    'A late slap and balls that start to the {trail} side: let the belt turn with the handle. Carry on.',
  exaggerations: [
    { level: 'mild', how: 'One pump.', setting: 'down to belt height once' },
    { level: 'firm', how: 'Three pumps.', setting: 'down to the tape three times' },
    {
      level: 'strong',
      how: 'Three pumps, the last past the tape.',
      setting: 'grip end level with the ball line, slow swings only',
      notFor: ['junior', 'senior'],
    },
  ],
  dose: 'Three blocks of eight with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 40,
  cautions: [...swingCautions, wristSentence],
  notWith: ['wrist-pain', 'elbow-pain', 'shoulder-pain'],
  source: 'common practice, no source',
};
