/** What the invented golfer does wrong; the words are the built-in causes, `none` is a sound swing. */
export const golferCauses = [
  'none',
  'handle-back',
  'hips-back-at-address',
  'sway-away',
  'hang-back',
  'thrown-early',
] as const;
export type GolferCause = (typeof golferCauses)[number];

/**
 * The knobs of one swing, in mm along the target line unless the name says otherwise. Every number is an invention of
 * this demo: sound values lie inside, faulty ones well outside the ranges that common practice names.
 */
export type SwingShape = {
  readonly hipAddressMm: number;
  readonly neckAddressMm: number;
  readonly headAddressMm: number;
  readonly gripEndAddressMm: number;
  /** Shifts of the hips from address to top, from top to lead-arm-parallel-down, and places at impact and finish. */
  readonly hipToTopMm: number;
  readonly hipFromTopMm: number;
  readonly hipImpactMm: number;
  readonly hipFinishMm: number;
  readonly neckToTopMm: number;
  readonly neckFromTopMm: number;
  readonly neckImpactMm: number;
  readonly neckFinishMm: number;
  /** Where the grip end is when the shaft is level on the way down. */
  readonly gripEndShaftParallelDownMm: number;
  /** Angle between lead arm and shaft that is left when the lead arm is level on the way down. */
  readonly lagDeg: number;
  /** How far the handle leads the clubhead at impact; negative when the clubhead has passed the hands. */
  readonly leanImpactDeg: number;
  readonly trailHeelLiftFinishMm: number;
};

const sound: SwingShape = {
  hipAddressMm: -76,
  neckAddressMm: -62,
  headAddressMm: -72,
  gripEndAddressMm: 4,
  hipToTopMm: -8,
  hipFromTopMm: 55,
  hipImpactMm: 0,
  hipFinishMm: 112,
  neckToTopMm: -8,
  neckFromTopMm: 16,
  neckImpactMm: -58,
  neckFinishMm: 70,
  gripEndShaftParallelDownMm: -45,
  lagDeg: 95,
  leanImpactDeg: 6,
  trailHeelLiftFinishMm: 120,
};

const departures: Readonly<Record<GolferCause, Partial<SwingShape>>> = {
  none: {},
  'handle-back': { gripEndAddressMm: -108, leanImpactDeg: 0 },
  'hips-back-at-address': {
    hipAddressMm: -138,
    neckAddressMm: -158,
    headAddressMm: -172,
    hipImpactMm: -72,
    neckImpactMm: -150,
    leanImpactDeg: 1,
  },
  'sway-away': {
    hipToTopMm: -96,
    neckToTopMm: -92,
    hipFromTopMm: 58,
    neckFromTopMm: 24,
    hipImpactMm: -40,
    neckImpactMm: -112,
    leanImpactDeg: 1,
  },
  'hang-back': {
    hipFromTopMm: 4,
    neckFromTopMm: -26,
    hipImpactMm: -66,
    hipFinishMm: -38,
    neckImpactMm: -118,
    neckFinishMm: -96,
    leanImpactDeg: -2,
    trailHeelLiftFinishMm: 18,
  },
  'thrown-early': { gripEndShaftParallelDownMm: -238, lagDeg: 48, leanImpactDeg: -4 },
};

/** The knobs of a sound swing with the departures of one cause, every length scaled to the player's size. */
export function swingShape(cause: GolferCause): SwingShape {
  return { ...sound, ...departures[cause] };
}
