import { everyDrill } from '../cautions.ts';
import type { Drill, Station, StationObject } from '../types.ts';
import { ballAtOrigin, feet } from './feet.ts';

const heelTape: StationObject = {
  what: 'tape',
  xMm: 85,
  yMm: -430,
  lengthMm: 260,
  widthMm: 25,
  rotationDeg: 90,
  label: 'tape towards the {lead} heel',
};
const ticks = [
  'Grip: the hollow at the base of your {lead} thumb lies on the {trail} half of the shaft.',
  'Handle: it hangs in front of the inside of your {lead} thigh, not at the middle of your body.',
  'Hips: your belt is half-way between your ankles or a touch towards the {lead} one.',
  'Ball: with a mid-iron two to three ball diameters (9 to 13 cm) inside your {lead} heel, under your {lead} ear.',
];
const camera =
  'Face the mirror, or put the phone on a stand, belt high, three to four steps (3 to 4 m) in front of you.';

const station = (place: Station['place'], first: string): Station => ({
  place,
  needs: place === 'home' ? ['club', 'mirror', 'tape'] : ['club', 'balls', 'mirror', 'tape'],
  objects: [ballAtOrigin, heelTape, ...feet({ ballInsideLeadHeelMm: 107 })],
  steps: [first, camera, ...ticks],
});

export const setUpPhoto: Drill = {
  id: 'set-up-photo',
  name: 'Set-up photo',
  version: 1,
  purpose: 'Makes the sound set-up the one you take without thinking. No ball is struck.',
  causes: ['handle-back', 'hips-back-at-address', 'weak-grip', 'ball-too-far-forward', 'stance-width'],
  stations: [
    station(
      'home',
      'Use a ball or a rolled-up sock; stick tape of one grip length (26 cm) from it towards your heels.',
    ),
    station(
      'mat',
      'Stick tape of one grip length (26 cm) on the mat, pointing from the ball towards your heels.',
    ),
    station(
      'grass',
      'Lay tape of one grip length (26 cm) on the grass, pointing from the ball towards your heels.',
    ),
  ],
  steps: [
    'Walk in from behind the ball and set up in your usual time.',
    'Take the picture, or look into the mirror, without moving.',
    'Tick grip, handle, hips and ball. All four, or it does not count.',
    'Step away, shake out your arms and begin again.',
  ],
  feel: 'The handle points at your {lead} pocket.',
  ladder: [
    {
      id: 'rehearsal',
      ball: false,
      balls: 5,
      speedPercent: 0,
      clean: 'Grip, handle, hips and ball are all ticked on the picture or in the mirror.',
      filmed: false,
      allOf: 5,
    },
    {
      id: 'brush',
      ball: false,
      balls: 5,
      speedPercent: 25,
      clean: 'All four ticked, then one slow brush, and all four again at once.',
      filmed: false,
      allOf: 5,
    },
  ],
  overCorrection:
    'Hands so far ahead that the club points behind you: the handle stays in front of the thigh, not past it.',
  exaggerations: [
    { level: 'mild', how: 'The four ticks as they are.', setting: 'belt half-way between the ankles' },
    {
      level: 'firm',
      how: 'Belt clearly on the {lead} half.',
      setting: 'belt two ball diameters (9 cm) towards the {lead} ankle from the middle',
    },
  ],
  dose: 'Five set-ups, twice a day, five days a week.',
  minutes: 10,
  ballsAtMost: 20,
  cautions: [...everyDrill],
  notWith: [],
  source: 'common practice, no source',
};
