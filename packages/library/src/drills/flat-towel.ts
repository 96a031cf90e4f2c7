import {
  ceilingSentence,
  everyDrill,
  firmMatSentence,
  softOnlySentence,
  warmUpSentence,
} from '../cautions.ts';
import type { Drill, Station, StationObject } from '../types.ts';
import { ballAtOrigin, feet } from './feet.ts';

/** The towel spread flat, its near edge so far behind the ball. A sound 8-iron is only 13 mm up at 11 cm. */
const towel = (nearEdgeMm: number): StationObject => ({
  what: 'towel',
  xMm: -(nearEdgeMm + 150),
  yMm: 0,
  lengthMm: 300,
  widthMm: 400,
  rotationDeg: 0,
  label: `towel, flat, ${nearEdgeMm / 10} cm behind the ball`,
});

const spread = [
  'Spread a thin towel flat in one layer, no thicker than a finger (8 mm): smooth it, no folds.',
  'Lay its near edge three and a half ball diameters (15 cm) behind the ball, square to the target line.',
];

const grass: Station = {
  place: 'grass',
  needs: ['club', 'balls', 'towel'],
  objects: [ballAtOrigin, towel(150), ...feet()],
  steps: [...spread, 'Press the far corners into the grass so that the wind does not lift them.'],
};
const mat: Station = {
  place: 'mat',
  needs: ['club', 'balls', 'towel', 'tape'],
  objects: [ballAtOrigin, towel(150), ...feet()],
  steps: [...spread, 'Tape the far edge of the towel to the mat, never the near one.'],
  lastRung: 'hip-high',
  ballsAtMost: 30,
};
const home: Station = {
  place: 'home',
  needs: ['club', 'rug', 'towel'],
  objects: [towel(150), ...feet()],
  steps: ['Lay a rug that does not slip; no ball.', ...spread],
  lastRung: 'brush',
  ballsAtMost: 30,
};

export const flatTowel: Drill = {
  id: 'flat-towel',
  name: 'Flat towel',
  version: 1,
  purpose: 'Tells you at once whether the club reached the ground before the ball.',
  causes: ['thrown-early', 'flip', 'dip', 'in-to-out', 'mat-hides-fat'],
  stations: [grass, mat, home],
  steps: [
    'Set up to the ball with the handle in front of the inside of your {lead} thigh.',
    'Swing so that the club passes over the towel and meets the ball first.',
    'If the towel moved, put it back exactly and make one slow swing without a ball.',
    'After ten, count: how often did the towel stay where it was?',
  ],
  feel: 'The handle is past the ball before the clubhead comes over the towel.',
  ladder: [
    {
      id: 'rehearsal',
      ball: false,
      balls: 10,
      speedPercent: 15,
      clean: 'Slowly: the club passes over the towel without touching it.',
      filmed: false,
    },
    {
      id: 'brush',
      ball: false,
      balls: 10,
      speedPercent: 25,
      clean: 'The towel stays where it is and the club brushes the ball spot or past it.',
      filmed: false,
    },
    {
      id: 'hip-high',
      ball: true,
      balls: 10,
      speedPercent: 30,
      clean: 'The towel stays where it is and the ball is struck first.',
      filmed: false,
    },
    {
      id: 'three-quarter',
      ball: true,
      balls: 10,
      speedPercent: 60,
      clean: 'The towel stays where it is, the mark begins at the ball or past it.',
      filmed: false,
    },
    {
      id: 'full',
      ball: true,
      balls: 10,
      speedPercent: 85,
      clean: 'The towel stays where it is, with your own rhythm.',
      filmed: false,
    },
    {
      id: 'transfer',
      ball: true,
      balls: 9,
      speedPercent: 85,
      clean: 'A new club and a new target each time, no towel: ball first.',
      filmed: false,
    },
  ],
  overCorrection:
    'Thin strikes and low starts to the {lead} side: the club now comes down on the ball. Carry on.',
  exaggerations: [
    {
      level: 'mild',
      how: 'One layer, farther back.',
      setting: 'near edge three and a half balls (15 cm) behind the ball',
      obstacle: { behindMm: 150, heightMm: 8 },
    },
    {
      level: 'firm',
      how: 'One layer, closer.',
      setting: 'near edge two and a half balls (11 cm) behind the ball',
      obstacle: { behindMm: 110, heightMm: 8 },
      notFor: ['junior'],
    },
    {
      level: 'strong',
      how: 'Folded to two fingers (2 to 3 cm), one grip length back.',
      setting: 'near edge one grip length (26 cm) behind the ball',
      obstacle: { behindMm: 260, heightMm: 30 },
      notFor: ['junior', 'senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week.',
  minutes: 15,
  ballsAtMost: 60,
  cautions: [...everyDrill, softOnlySentence, warmUpSentence, firmMatSentence, ceilingSentence],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source; heights over the towel from the geometry of the arc',
};
