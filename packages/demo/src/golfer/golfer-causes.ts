import type { Trait } from './traits.ts';

export const golferCauses = [
  'none',
  'handle-back',
  'hips-back-at-address',
  'sway-away',
  'hang-back',
  'thrown-early',
  'flip',
  'dip',
  'lift',
  'reverse-tilt',
  'upper-body-lunge',
  'ball-too-far-forward',
  'ball-too-far-back',
  'hips-toward-ball',
  'out-to-in',
  'in-to-out',
  'slide-without-turn',
  'too-close-upright',
] as const;
/** What the invented golfer does wrong; the words are the built-in causes, `none` is a sound swing. */
export type GolferCause = (typeof golferCauses)[number];
export type PlantedCause = Exclude<GolferCause, 'none'>;

/** A sign of a cause: the trait lies `past` an edge by so much, or, at the rate 1 - `sensitivity`, it does not. */
export type Departure = {
  readonly trait: Trait;
  readonly edge: number;
  readonly side: 'above' | 'below';
  readonly past: readonly [least: number, most: number];
  readonly sensitivity: number;
};

export type CauseKnobs = {
  /** The view in which the cause shows, and the miss it brings most often. */
  readonly view: 'face-on' | 'down-the-line';
  readonly fault: string;
  readonly departures: readonly Departure[];
  /** What always comes with it, added to the trait: how the arc suffers. */
  readonly carries: Readonly<Partial<Record<Trait, readonly [least: number, most: number]>>>;
};

const below = (
  trait: Trait,
  edge: number,
  past: readonly [number, number],
  sensitivity: number,
): Departure => ({
  trait,
  edge,
  side: 'below',
  past,
  sensitivity,
});
const above = (
  trait: Trait,
  edge: number,
  past: readonly [number, number],
  sensitivity: number,
): Departure => ({
  trait,
  edge,
  side: 'above',
  past,
  sensitivity,
});

/** A low point too far back and an arc a little too low: the ground first. */
const fat = { leanImpactDeg: [-3, -1.6], hubAheadMm: [-60, -35], soleHeightMm: [-7, -4] } as const;

/** Edges and sensitivities: common practice, no source; how far past the edge: inventions of this demo. */
export const causeKnobs: Readonly<Record<PlantedCause, CauseKnobs>> = {
  'handle-back': {
    view: 'face-on',
    fault: 'fat',
    departures: [below('handleAheadOfThighMm', -30, [15, 80], 0.9)],
    carries: fat,
  },
  'hips-back-at-address': {
    view: 'face-on',
    fault: 'fat',
    departures: [below('hipAlongAnklesPercent', 49, [2, 9], 0.9)],
    carries: fat,
  },
  'sway-away': {
    view: 'face-on',
    fault: 'fat',
    departures: [below('hipToTopMm', -40, [15, 65], 0.9)],
    carries: { ...fat, neckToImpactMm: [-24, -10], hipToImpactMm: [-24, -10] },
  },
  'hang-back': {
    view: 'face-on',
    fault: 'fat',
    departures: [
      below('hipFromTopMm', 30, [8, 45], 0.8),
      below('neckFromTopMm', 0, [4, 30], 0.6),
      below('hipFinishPastBallMm', 0, [15, 70], 0.65),
      below('hipToImpactMm', 30, [5, 40], 0.7),
    ],
    carries: {
      ...fat,
      neckToImpactMm: [-26, -12],
      trailHeelLiftImpactMm: [-30, -15],
      trailHeelLiftFinishMm: [-100, -60],
    },
  },
  'thrown-early': {
    view: 'face-on',
    fault: 'fat',
    departures: [below('gripEndShaftParallelDownMm', -125, [20, 110], 0.9)],
    carries: { ...fat, lagDeg: [-36, -18] },
  },
  flip: {
    view: 'face-on',
    fault: 'thin',
    departures: [below('leanImpactDeg', 2, [1, 8], 0.9)],
    carries: { soleHeightMm: [4, 7], hubAheadMm: [-30, -10] },
  },
  dip: {
    view: 'face-on',
    fault: 'fat',
    departures: [below('neckRiseImpactMm', -25, [10, 50], 0.9)],
    carries: { soleHeightMm: [-10, -6], leanImpactDeg: [-1.5, 0] },
  },
  lift: {
    view: 'face-on',
    fault: 'topped',
    departures: [above('neckRiseImpactMm', 30, [10, 50], 0.9)],
    carries: { soleHeightMm: [21, 28], bendLossDeg: [1, 3] },
  },
  'reverse-tilt': {
    view: 'face-on',
    fault: 'fat',
    departures: [above('trunkLeanTopDeg', 5, [2, 8], 0.9)],
    carries: { ...fat, neckFromTopMm: [-14, -6] },
  },
  'upper-body-lunge': {
    view: 'face-on',
    fault: 'topped',
    departures: [above('neckToImpactMm', 30, [12, 55], 0.9)],
    carries: { soleHeightMm: [20, 26], neckFromTopMm: [8, 18] },
  },
  'ball-too-far-forward': {
    view: 'face-on',
    fault: 'fat',
    departures: [below('ballInsideLeadHeelMm', 80, [18, 60], 0.9)],
    carries: { soleHeightMm: [-6, -3] },
  },
  'ball-too-far-back': {
    view: 'face-on',
    fault: 'push',
    departures: [above('ballInsideLeadHeelMm', 130, [18, 60], 0.9)],
    carries: { swingDirectionDeg: [1, 3] },
  },
  'hips-toward-ball': {
    view: 'down-the-line',
    fault: 'shank',
    departures: [above('seatTowardBallMm', 30, [12, 60], 0.85), above('bendLossDeg', 8, [2, 9], 0.8)],
    carries: {
      headOutMm: [30, 42],
      shaftRaisedAtImpactDeg: [2.5, 5],
      neckRiseImpactMm: [8, 22],
      hipTurnImpactDeg: [-20, -8],
    },
  },
  'out-to-in': {
    view: 'down-the-line',
    fault: 'slice',
    departures: [
      above('shaftSteeperDeg', 6, [2, 10], 0.75),
      above('handsOutMm', 40, [15, 70], 0.75),
      below('swingDirectionDeg', -4, [1, 6], 0.8),
    ],
    carries: {},
  },
  'in-to-out': {
    view: 'down-the-line',
    fault: 'hook',
    departures: [above('swingDirectionDeg', 4, [1, 6], 0.8), below('shaftSteeperDeg', -6, [2, 9], 0.75)],
    carries: { handsOutMm: [-40, -15] },
  },
  'slide-without-turn': {
    view: 'face-on',
    fault: 'push',
    departures: [above('hipToImpactMm', 130, [18, 65], 0.9)],
    carries: { hipTurnImpactDeg: [-28, -18], swingDirectionDeg: [1, 3] },
  },
  'too-close-upright': {
    view: 'down-the-line',
    fault: 'shank',
    departures: [below('handsToThighsMm', 100, [12, 50], 0.85), below('trunkBendDeg', 30, [2, 7], 0.75)],
    carries: { headOutMm: [28, 40] },
  },
};

const pairs: readonly (readonly [PlantedCause, PlantedCause])[] = [
  ['dip', 'lift'],
  ['ball-too-far-forward', 'ball-too-far-back'],
  ['out-to-in', 'in-to-out'],
  ['hang-back', 'upper-body-lunge'],
  ['hang-back', 'slide-without-turn'],
  ['sway-away', 'slide-without-turn'],
];

/** Whether one body cannot do both. */
export const opposed = (a: GolferCause, b: GolferCause): boolean =>
  pairs.some(([one, other]) => (one === a && other === b) || (one === b && other === a));
