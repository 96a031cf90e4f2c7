import { bendJoint } from './bend-joint.ts';
import { between, plus, radians, type Spot, spot } from './space.ts';
import type { SwingShape } from './traits.ts';

/** Lengths of a body of 1.78 m in mm, before its size; common proportions, no source. */
export const bodyMm = {
  hipHeight: 945,
  hipDepth: -55,
  hipJoint: 88,
  hipJointDrop: 45,
  trunk: 533,
  thigh: 425,
  shin: 412,
  upperArm: 300,
  forearm: 285,
  shoulderJoint: 185,
  pelvisHalfWidth: 172,
  pelvisHalfDepth: 128,
  /** A buckle sits in front of the middle of the hips by this much (derived for the words of facts: 13 cm). */
  buckleAhead: 130,
  thighHalfDepth: 78,
  thighHalfWidth: 42,
} as const;

export type Legs = {
  readonly hip: Spot;
  readonly knee: Spot;
  readonly ankle: Spot;
  readonly heel: Spot;
  readonly toe: Spot;
};

/** Where the player stands to the ball at address: everything that follows from the traits before the club moves. */
export type Stance = {
  readonly leadHeelMm: number;
  readonly trailHeelMm: number;
  readonly hipMm: number;
  readonly neckMm: number;
  readonly headMm: number;
  readonly gripEndMm: number;
  readonly ball: Spot;
  readonly clubhead: Spot;
  /** A stick on the ground along the target line: its trail and its target end. */
  readonly stick: readonly [Spot, Spot];
  /** Angle of the shaft from "straight down" in its plane, + leaning so that the head leads, and that plane's slope. */
  readonly shaftRad: number;
  readonly shaftPlaneDeg: number;
};

/** The reference point of the clubhead, the middle of the face: over the sole, and behind the ball when it is struck. */
export const headOverSoleMm = 22;
export const headBehindBallMm = -25;
const ballRadiusMm = 21.335;
/** The middle of both hands along the club from its butt. */
export const handsDownGripMm = 120;

/** One leg on the ground, lifted at the heel by `liftMm`, its knee turned towards `pole`. */
export function standLeg(
  size: number,
  hipMiddle: Spot,
  hipAcross: Spot,
  side: 1 | -1,
  heelMm: number,
  liftMm: number,
  pole: Spot,
): Legs {
  const hip = plus(
    plus(hipMiddle, hipAcross, side * bodyMm.hipJoint * size),
    spot(0, -bodyMm.hipJointDrop * size, 0),
  );
  const heel = spot(heelMm + liftMm * 0.2, 22 + liftMm, -45 + liftMm * 0.35);
  const ankle = spot(heelMm + side * 8 + liftMm * 0.25, 92 + liftMm * 0.85, liftMm * 0.5);
  const toe = spot(heelMm + side * 62, 22, 195);
  const knee = bendJoint(hip, ankle, bodyMm.thigh * size, bodyMm.shin * size, pole);
  return { hip, knee, ankle, heel, toe };
}

export const thighFrontOf = (leg: { hip: Spot; knee: Spot }): Spot =>
  plus(between(leg.hip, leg.knee, 0.42), spot(0, 0, bodyMm.thighHalfDepth));
export const thighInsideOf = (leg: { hip: Spot; knee: Spot }): Spot =>
  plus(between(leg.hip, leg.knee, 0.5), spot(-bodyMm.thighHalfWidth, 0, 0.5 * bodyMm.thighHalfDepth));

export function stanceOf(shape: SwingShape): Stance {
  const size = shape.bodySize;
  const leadHeelMm = shape.ballInsideLeadHeelMm;
  const trailHeelMm = leadHeelMm - shape.heelDistanceMm;
  const trailAnkle = trailHeelMm - 8;
  const hipMm = trailAnkle + (shape.hipAlongAnklesPercent / 100) * (shape.heelDistanceMm + 16);
  const bend = radians(shape.trunkBendDeg);
  const neckMm = hipMm + Math.tan(radians(shape.trunkLeanAddressDeg)) * bodyMm.trunk * size * Math.cos(bend);
  const hips = spot(hipMm, bodyMm.hipHeight * size, bodyMm.hipDepth * size);
  const lead = standLeg(size, hips, spot(1, 0, 0), 1, leadHeelMm, 0, spot(0.25, 0, 1));
  const trail = standLeg(size, hips, spot(1, 0, 0), -1, trailHeelMm, 0, spot(-0.25, 0, 1));
  // A ball played elsewhere takes the hands along by less than half of the way.
  const follow = 0.4 * (112 - shape.ballInsideLeadHeelMm);
  const gripEndMm = thighInsideOf(lead).x + shape.handleAheadOfThighMm - Math.max(-12, Math.min(12, follow));
  const length = shape.clubLengthMm;
  const shaftRad = Math.asin((headBehindBallMm - gripEndMm) / length);
  const shaftPlaneDeg = shape.planeDeg - shape.shaftRaisedAtImpactDeg;
  const reach = (length - handsDownGripMm) * Math.cos(shaftRad) * Math.cos(radians(shaftPlaneDeg));
  const ballZ = thighFrontOf(trail).z + shape.handsToThighsMm + reach;
  const stickZ = ballZ + shape.stickBeyondBallMm;
  return {
    leadHeelMm,
    trailHeelMm,
    hipMm,
    neckMm,
    headMm: neckMm - shape.headBehindNeckMm,
    gripEndMm,
    ball: spot(0, ballRadiusMm, ballZ),
    clubhead: spot(headBehindBallMm, headOverSoleMm, ballZ),
    stick: [spot(-shape.stickLengthMm / 2, 5, stickZ), spot(shape.stickLengthMm / 2, 5, stickZ)],
    shaftRad,
    shaftPlaneDeg,
  };
}
