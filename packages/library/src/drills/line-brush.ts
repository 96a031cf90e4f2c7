import { ceilingSentence, everyDrill, firmMatSentence, warmUpSentence } from '../cautions.ts';
import type { Drill, Station, StationObject } from '../types.ts';
import { ballAtOrigin, feet } from './feet.ts';

/** Two pieces of tape or string that show the line, with a gap where the club brushes. */
const lineAtBall: readonly StationObject[] = [
  {
    what: 'tape',
    xMm: 0,
    yMm: 250,
    lengthMm: 200,
    widthMm: 25,
    rotationDeg: 90,
    label: 'tape beyond the ball spot',
  },
  {
    what: 'tape',
    xMm: 0,
    yMm: -250,
    lengthMm: 200,
    widthMm: 25,
    rotationDeg: 90,
    label: 'tape on your side',
  },
];

const grass: Station = {
  place: 'grass',
  needs: ['club', 'balls', 'tape'],
  objects: [
    { what: 'line', xMm: 0, yMm: 0, lengthMm: 600, widthMm: 10, rotationDeg: 90, label: 'line, 60 cm' },
    ballAtOrigin,
    ...feet(),
  ],
  steps: [
    'Draw a line across the target line with a tee or your heel: two grip lengths and a bit (60 cm) long.',
    'Stand so that the line runs two ball diameters (about 9 cm) inside your {lead} heel.',
    'Without a ball, the line is your ball. With a ball, lay it on the line.',
    'Move forward by a shoe for each new line; never swing towards another player.',
  ],
};
const mat: Station = {
  place: 'mat',
  needs: ['club', 'balls', 'tape', 'towel'],
  objects: [...lineAtBall, ballAtOrigin, ...feet()],
  steps: [
    'Stick two pieces of tape, each three quarters of a grip length (20 cm), in one line across the mat.',
    'Leave a gap of one grip length and a ball (30 cm) between them: the club brushes there.',
    'Wipe the gap with a damp towel, so that the club leaves a streak you can see.',
    'Stand so that the line runs two ball diameters (about 9 cm) inside your {lead} heel.',
  ],
  lastRung: 'hip-high',
  ballsAtMost: 30,
};
const home: Station = {
  place: 'home',
  needs: ['club', 'rug', 'tape'],
  objects: [...lineAtBall, ...feet()],
  steps: [
    'Lay a rug of at least four grip lengths (1 m) on a floor that may be touched; no ball.',
    'Stick two pieces of tape, each three quarters of a grip length (20 cm), in one line across the rug, a grip length and a ball (30 cm) apart.',
    'Stand so that the line runs two ball diameters (about 9 cm) inside your {lead} heel.',
    'Swing slowly; the sole strokes the rug, it does not hit it.',
  ],
  lastRung: 'brush',
  ballsAtMost: 30,
};

export const lineBrush: Drill = {
  id: 'line-brush',
  name: 'Line brush',
  version: 1,
  purpose: 'Teaches where the swing meets the ground: at the ball or just past it.',
  causes: [
    'sway-away',
    'hang-back',
    'thrown-early',
    'flip',
    'hips-back-at-address',
    'handle-back',
    'dip',
    'lift',
    'ball-too-far-forward',
    'reverse-tilt',
    'upper-body-lunge',
    'lead-arm-bend',
    'grip-tension',
    'over-long',
    'rushed',
    'radius-change',
  ],
  stations: [grass, mat, home],
  steps: [
    'Set up to the line as to a ball, belt half-way between your ankles or a touch forward.',
    'Swing and brush the ground. Look where the mark begins, not where the club ends up.',
    'Call it before you look: on the line, before it or past it.',
    'After five brushes step away, look at all five marks and choose one thing to change.',
  ],
  feel: 'Your shirt buttons are past the line when the club touches the ground.',
  ladder: [
    {
      id: 'rehearsal',
      ball: false,
      balls: 10,
      speedPercent: 15,
      clean: 'Slowly, without touching: the club passes lowest over the line or past it.',
      filmed: false,
    },
    {
      id: 'brush',
      ball: false,
      balls: 10,
      speedPercent: 25,
      clean: 'The mark begins on the line or no more than two and a half balls (10 cm) past it.',
      filmed: false,
    },
    {
      id: 'hip-high',
      ball: true,
      balls: 10,
      speedPercent: 30,
      clean: 'Ball first: the mark begins at the ball or past it.',
      filmed: false,
    },
    {
      id: 'three-quarter',
      ball: true,
      balls: 10,
      speedPercent: 60,
      clean: 'Ball first, and the mark begins no more than two and a half balls (10 cm) past the line.',
      filmed: false,
    },
    {
      id: 'full',
      ball: true,
      balls: 10,
      speedPercent: 85,
      clean: 'Ball first with your own rhythm; you hold the finish for two seconds.',
      filmed: false,
    },
    {
      id: 'transfer',
      ball: true,
      balls: 9,
      speedPercent: 85,
      clean: 'A new club and a new target each time, no line on the ground: ball first.',
      filmed: false,
    },
  ],
  overCorrection:
    'Thin strikes, or brushes that begin well past the line. The low point has moved forward: carry on.',
  exaggerations: [
    { level: 'mild', how: 'Brush on the line or past it.', setting: 'mark begins 0 to 10 cm past the line' },
    {
      level: 'firm',
      how: 'Brush past the line on purpose.',
      setting: 'mark begins one to two and a half balls (4 to 10 cm) past the line',
    },
    {
      level: 'strong',
      how: 'Lay a second line ahead of the first and brush only that one.',
      setting: 'second line two and a half balls (10 cm) ahead',
      notFor: ['junior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three or four days a week; a day of rest after full swings.',
  minutes: 15,
  ballsAtMost: 60,
  cautions: [...everyDrill, warmUpSentence, firmMatSentence, ceilingSentence],
  notWith: ['wrist-pain'],
  source: 'common practice, no source',
};
