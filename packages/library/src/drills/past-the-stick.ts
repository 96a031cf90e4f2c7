import { ceilingSentence, everyDrill, firmMatSentence, warmUpSentence } from '../cautions.ts';
import type { Drill, Station, StationObject } from '../types.ts';
import { ballAtOrigin, feet } from './feet.ts';

// Flat on the ground, its near end at least 40 cm inside the ball: far from the path of the club.
const ballLine = (what: 'stick' | 'tape'): StationObject => ({
  what,
  xMm: 0,
  yMm: -700,
  lengthMm: 520,
  widthMm: what === 'stick' ? 12 : 25,
  rotationDeg: 90,
  label: `${what} on the ball line`,
});
const rulers = [
  'It is two grip lengths (52 cm) long, flat on the ground and leads from the ball to between your feet; its near end is at least one and a half grip lengths (40 cm) from the ball.',
  'Stand with your belt over it or a hand away from it, towards your {trail} foot.',
  'Put the phone on a stand facing you, belt high, 3 to 4 m away.',
];

const grass: Station = {
  place: 'grass',
  needs: ['club', 'balls', 'stick', 'mirror'],
  objects: [ballAtOrigin, ballLine('stick'), ...feet()],
  steps: ['Lay a stick, or the grip of a spare club, on the line of the ball.', ...rulers],
};
const mat: Station = {
  place: 'mat',
  needs: ['club', 'balls', 'tape', 'mirror'],
  objects: [ballAtOrigin, ballLine('tape'), ...feet()],
  steps: ['Stick tape on the line of the ball.', ...rulers],
  lastRung: 'hip-high',
  ballsAtMost: 30,
};
const home: Station = {
  place: 'home',
  needs: ['club', 'rug', 'tape', 'mirror'],
  objects: [ballLine('tape'), ...feet()],
  steps: ['Lay a rug that does not slip; no ball. Stick tape on the line of the ball spot.', ...rulers],
  lastRung: 'brush',
  ballsAtMost: 30,
};

export const pastTheStick: Drill = {
  id: 'past-the-stick',
  name: 'Past the stick',
  version: 1,
  purpose: 'Takes the hips past the ball line and over the {lead} foot, and leaves them there.',
  causes: ['hang-back', 'sway-away'],
  stations: [grass, mat, home],
  steps: [
    'Swing back to hip height, the belt staying where it began.',
    'Before your arms come down, let the belt move towards the target.',
    'Finish with the belt past the line and over your {lead} ankle and hold it for three seconds.',
    'Look at the film of one swing of three: was the belt past the line?',
  ],
  feel: 'Your belt buckle wins the race to the target.',
  ladder: [
    {
      id: 'rehearsal',
      ball: false,
      balls: 10,
      speedPercent: 15,
      clean: 'Belt past the line and over the {lead} ankle, held for three seconds.',
      filmed: false,
    },
    {
      id: 'brush',
      ball: false,
      balls: 10,
      speedPercent: 25,
      clean: 'Brush at the ball spot or past it, belt past the line, held for three seconds.',
      filmed: false,
    },
    {
      id: 'hip-high',
      ball: true,
      balls: 10,
      speedPercent: 30,
      clean: 'Ball first, and on film the belt is past the line for three seconds.',
      filmed: true,
    },
    {
      id: 'three-quarter',
      ball: true,
      balls: 10,
      speedPercent: 60,
      clean: 'Ball first, and on film the belt is past the line for three seconds.',
      filmed: true,
    },
    {
      id: 'full',
      ball: true,
      balls: 10,
      speedPercent: 85,
      clean: 'Ball first with your own rhythm, finish held for three seconds.',
      filmed: false,
    },
  ],
  overCorrection:
    'The head runs ahead too and the ball comes out low or topped: let the belt go first and the head stay.',
  exaggerations: [
    { level: 'mild', how: 'Belt past the line.', setting: 'belt just past the ball line at the finish' },
    {
      level: 'firm',
      how: 'Belt over the {lead} ankle.',
      setting: 'belt two balls (9 cm) past the ball line',
    },
    {
      level: 'strong',
      how: 'Belt over the {lead} ankle before the arms come down.',
      setting: 'slow swings without a ball only',
      notFor: ['senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...everyDrill, warmUpSentence, firmMatSentence, ceilingSentence],
  notWith: ['hip-pain', 'knee-pain', 'low-back-pain'],
  source: 'common practice, no source',
};
