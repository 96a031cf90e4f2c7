/**
 * What tells one invented golfer from another. Each trait is drawn from a normal distribution over sound players and
 * cut at 2.2 SD; lengths in mm, angles in degrees, times in seconds. Along the line + is towards the target.
 * All figures are inventions of this demo inside what common practice calls sound, but for those with a source.
 */
export type Spread = { readonly mean: number; readonly sd: number };

const of = (mean: number, sd: number): Spread => ({ mean, sd });

export const traits = {
  /** Body against a player of 1.78 m; clubs come in lengths (8-iron 927 mm, common practice). */
  bodySize: of(1, 0.03),
  clubLengthMm: of(927, 20),

  // A stick on the ground to level the camera by: 45 to 48 inches, through the ball's place along the target line.
  stickLengthMm: of(1190, 20),
  stickBeyondBallMm: of(0, 12),

  // Address.
  ballInsideLeadHeelMm: of(112, 9),
  heelDistanceMm: of(400, 20),
  /** Hip-middle along the line of the ankles: 0 over the trail, 100 over the lead ankle. */
  hipAlongAnklesPercent: of(54.4, 1.8),
  trunkLeanAddressDeg: of(0.3, 1.6),
  headBehindNeckMm: of(10, 6),
  handleAheadOfThighMm: of(7, 11),
  trunkBendDeg: of(35, 2),
  handsToThighsMm: of(150, 13),
  /** Rise of the shaft between address and impact, in its own plane. */
  shaftRaisedAtImpactDeg: of(1.6, 1),

  // Address to top, top to lead arm parallel.
  hipToTopMm: of(-8, 14),
  trunkLeanTopDeg: of(-2.5, 2.2),
  neckRiseTopMm: of(-2, 9),
  hipFromTopMm: of(60, 14),
  neckFromTopMm: of(20, 9),
  neckRiseLeadArmDownMm: of(-15, 8),
  lagDeg: of(96, 5),
  shaftSteeperDeg: of(0.5, 2.2),
  handsOutMm: of(0, 15),
  takeawayDirectionDeg: of(0, 2.2),

  // On the way down and at impact.
  gripEndShaftParallelDownMm: of(-80, 17),
  hipToImpactMm: of(74, 16),
  neckToImpactMm: of(2, 11),
  neckRiseImpactMm: of(2, 9),
  hipTurnImpactDeg: of(36, 4),
  bendLossDeg: of(3, 1.7),
  seatTowardBallMm: of(-6, 10),
  leanImpactDeg: of(8, 1.2),
  trailHeelLiftImpactMm: of(30, 9),
  hipFinishPastBallMm: of(112, 22),
  trailHeelLiftFinishMm: of(120, 12),

  // Delivery of the club: speeds, loss and turf as stated in the design of the truth test; common practice, no source.
  planeDeg: of(62, 2),
  swingDirectionDeg: of(0, 1.5),
  armSpeedRadS: of(11, 1.5),
  clubSpeedRadS: of(33.5, 2),
  speedKept: of(0.82, 0.06),
  turfKinkRad: of(0, 0.02),
  /** Hub of the arms ahead of the neck-base at impact, and the sole over flat ground at the ball. */
  hubAheadMm: of(145, 12),
  soleHeightMm: of(1, 1.2),
  headOutMm: of(0, 4),

  // Tempo: back against down near three to one (Grober & Cholewicki; number from memory), back .82 s (common practice).
  backS: of(0.82, 0.05),
  tempoRatio: of(2.95, 0.2),
} as const satisfies Record<string, Spread>;

export type Trait = keyof typeof traits;
/** One golfer: a value for each trait. */
export type SwingShape = Readonly<Record<Trait, number>>;

export const traitNames = Object.keys(traits) as readonly Trait[];
