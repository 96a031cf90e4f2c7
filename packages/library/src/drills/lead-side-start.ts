import {
  ceilingSentence,
  everyDrill,
  firmMatSentence,
  standSafelySentence,
  warmUpSentence,
} from '../cautions.ts';
import type { Drill, Station, StationObject } from '../types.ts';
import { ballAtOrigin, feet } from './feet.ts';

// The trail toe drawn back by two thirds of a grip length: 15 to 20 cm.
const drawnBack = feet({ trailBackMm: 175, stanceMm: 300 });
const toeTape: StationObject = {
  what: 'tape',
  xMm: -60,
  yMm: -510,
  lengthMm: 500,
  widthMm: 25,
  rotationDeg: 0,
  label: 'tape along your toes',
};

const stance = [
  'Put your {lead} foot flat, the ball two ball diameters (about 9 cm) inside its heel.',
  'Draw your {trail} foot back by two thirds of a grip length (15 to 20 cm) and lift its heel: only the toe stands.',
  'Feel four fifths of your weight on the {lead} foot, before you move and until you finish.',
];

const grass: Station = {
  place: 'grass',
  needs: ['club', 'balls'],
  objects: [ballAtOrigin, ...drawnBack],
  steps: ['Choose level ground.', ...stance],
};
const mat: Station = {
  place: 'mat',
  needs: ['club', 'balls', 'tape'],
  objects: [ballAtOrigin, toeTape, ...drawnBack],
  steps: [
    'Stick tape of two grip lengths (50 cm) where the toes of your {lead} foot go, along the target line.',
    ...stance,
  ],
  lastRung: 'hip-high',
  ballsAtMost: 30,
};
const home: Station = {
  place: 'home',
  needs: ['club', 'rug', 'tape'],
  objects: [toeTape, ...drawnBack],
  steps: [
    'Lay a rug that does not slip; no ball.',
    'Stick tape of two grip lengths (50 cm) where the toes of your {lead} foot go.',
    ...stance,
  ],
  lastRung: 'brush',
  ballsAtMost: 30,
};

export const leadSideStart: Drill = {
  id: 'lead-side-start',
  name: 'Front-foot start',
  version: 1,
  purpose: 'Lets you feel a strike with the weight already over the {lead} foot.',
  causes: ['hang-back', 'hips-back-at-address', 'sway-away'],
  stations: [grass, mat, home],
  steps: [
    'Take the stance of the station and check it: if you lift the {trail} toe, you do not fall.',
    'Swing back to hip height and through to hip height without putting the {trail} heel down.',
    'Push against the {lead} side of the ground as the club comes down.',
    'Hold the finish for three seconds on the {lead} foot.',
  ],
  feel: 'You push the ground away under the {lead} shoe.',
  ladder: [
    {
      id: 'rehearsal',
      ball: false,
      balls: 10,
      speedPercent: 15,
      clean: 'You could lift the {trail} toe at any moment without falling.',
      filmed: false,
    },
    {
      id: 'brush',
      ball: false,
      balls: 10,
      speedPercent: 25,
      clean:
        'The club brushes the ground at the ball spot or past it, and you hold the finish for three seconds.',
      filmed: false,
    },
    {
      id: 'hip-high',
      ball: true,
      balls: 10,
      speedPercent: 30,
      clean: 'Ball first, the {trail} heel never came down, finish held for three seconds.',
      filmed: false,
    },
    {
      id: 'three-quarter',
      ball: true,
      balls: 10,
      speedPercent: 60,
      clean:
        'Both feet flat now: ball first, and at the finish the {trail} sole can tap the ground without weight.',
      filmed: false,
    },
    {
      id: 'full',
      ball: true,
      balls: 10,
      speedPercent: 85,
      clean: 'Ball first in your usual stance, finish held for three seconds on the {lead} foot.',
      filmed: false,
    },
    {
      id: 'transfer',
      ball: true,
      balls: 9,
      speedPercent: 85,
      clean:
        'A new club and a new target each time, usual stance: ball first and a finish held for three seconds.',
      filmed: false,
    },
  ],
  overCorrection:
    'Low shots that start to the {lead} side, steep divots, a topped ball now and then: carry on, they fade.',
  exaggerations: [
    {
      level: 'mild',
      how: 'Both feet flat, weight felt three fifths on the {lead} foot.',
      setting: '{trail} foot not drawn back',
    },
    {
      level: 'firm',
      how: 'The {trail} foot drawn back, only its toe on the ground.',
      setting: 'two thirds of a grip length (15 to 20 cm)',
    },
    {
      level: 'strong',
      how: 'The {trail} foot drawn back, and a step towards the target with the {lead} foot before the swing ends.',
      setting: 'a step of one grip length (26 cm), hip-high only',
      notFor: ['junior', 'senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 50,
  cautions: [...everyDrill, warmUpSentence, firmMatSentence, ceilingSentence, standSafelySentence],
  notWith: ['hip-pain', 'knee-pain', 'low-back-pain'],
  source: 'common practice, no source; pushing against the ground on the lead side: An, Wulf & Kim 2013',
};
