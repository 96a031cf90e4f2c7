import {
  ceilingSentence,
  everyDrill,
  firmMatSentence,
  softOnlySentence,
  warmUpSentence,
} from '../cautions.ts';
import { ballDiameterMm, gripLengthMm } from '../constants.ts';
import type { Drill, Station, StationObject } from '../types.ts';
import { ballAtOrigin, feet } from './feet.ts';

// Mild: one grip length and two balls; a sound 8-iron needs 254 mm, a shallow arc 304 mm (from the geometry of the arc).
const fenceAt = (balls: number) => ({
  behindMm: Math.round(gripLengthMm + balls * ballDiameterMm),
  heightMm: ballDiameterMm,
});
const fence: readonly StationObject[] = [-1, 0, 1].map((place) => ({
  what: 'soft-ball',
  xMm: -fenceAt(2).behindMm,
  yMm: Math.round(place * ballDiameterMm),
  lengthMm: 43,
  widthMm: 43,
  rotationDeg: 0,
  label: 'soft practice ball',
}));

const build = [
  'Lay three soft practice balls side by side across the target line, the middle one on it.',
  'Leave one grip length and two ball diameters (34 cm) between fence and ball.',
];

const grass: Station = {
  place: 'grass',
  needs: ['club', 'balls', 'soft-balls'],
  objects: [ballAtOrigin, ...fence, ...feet()],
  steps: [
    ...build,
    'Begin with the clubhead hovering over the fence and half your weight or a little more on the {lead} foot.',
  ],
};
const mat: Station = {
  place: 'mat',
  needs: ['club', 'balls', 'soft-balls'],
  objects: [ballAtOrigin, ...fence, ...feet()],
  steps: [...build, 'Only soft balls on the mat, the struck one too, from the first swing to the last.'],
  lastRung: 'hip-high',
  ballsAtMost: 30,
};
const home: Station = {
  place: 'home',
  needs: ['club', 'rug', 'soft-balls'],
  objects: [...fence, ...feet()],
  steps: [...build, 'No ball to strike: brush the rug where it would lie.'],
  lastRung: 'brush',
  ballsAtMost: 30,
};

export const ballFence: Drill = {
  id: 'ball-fence',
  name: 'Ball fence',
  version: 1,
  purpose: 'Brings the club down onto the ball from above a low fence behind it.',
  causes: ['hang-back', 'thrown-early', 'flip'],
  stations: [grass, mat, home],
  steps: [
    'Set up with the clubhead hovering just above the fence.',
    'Swing back to hip height and move onto your {lead} foot before the club comes down.',
    'Swing over the fence and brush the ground at the ball or past it.',
    'A touched fence tells you something; it is no failure. Put it back and swing slower.',
  ],
  feel: 'The handle passes the fence long before the clubhead does.',
  ladder: [
    {
      id: 'rehearsal',
      ball: false,
      balls: 10,
      speedPercent: 15,
      clean: 'Slowly: the club passes over the fence without touching it.',
      filmed: false,
    },
    {
      id: 'brush',
      ball: false,
      balls: 10,
      speedPercent: 25,
      clean: 'Fence untouched, and the brush begins at the ball spot or past it.',
      filmed: false,
    },
    {
      id: 'hip-high',
      ball: true,
      balls: 10,
      speedPercent: 30,
      clean: 'Fence untouched and the ball struck first.',
      filmed: false,
    },
    {
      id: 'three-quarter',
      ball: true,
      balls: 10,
      speedPercent: 60,
      clean: 'Fence untouched, ball first, the mark begins at the ball or past it.',
      filmed: false,
    },
    {
      id: 'full',
      ball: true,
      balls: 10,
      speedPercent: 80,
      clean: 'No fence now: ball first with your own rhythm.',
      filmed: false,
    },
    {
      id: 'transfer',
      ball: true,
      balls: 9,
      speedPercent: 85,
      clean: 'A new club and a new target each time, no fence: ball first.',
      filmed: false,
    },
  ],
  overCorrection:
    'Thin strikes and a divot deep ahead of the ball: the club now comes down forward. Carry on.',
  exaggerations: [
    {
      level: 'mild',
      how: 'The fence far back.',
      setting: 'one grip length and two balls (34 cm) behind the ball',
      obstacle: fenceAt(2),
    },
    {
      level: 'firm',
      how: 'The fence closer.',
      setting: 'one grip length and one ball (30 cm) behind the ball',
      obstacle: fenceAt(1),
    },
    {
      level: 'strong',
      how: 'The fence close.',
      setting: 'one grip length (26 cm) behind the ball',
      obstacle: fenceAt(0),
      notFor: ['junior', 'senior'],
    },
  ],
  dose: 'Three blocks of ten with a minute between them, three days a week, with a day between.',
  minutes: 15,
  ballsAtMost: 60,
  cautions: [...everyDrill, softOnlySentence, warmUpSentence, firmMatSentence, ceilingSentence],
  notWith: ['wrist-pain', 'elbow-pain'],
  source: 'common practice, no source; fence distances from the geometry of the arc',
};
