import { bendJoint } from './bend-joint.ts';
import type { Club } from './club-motion.ts';
import { keyedCurve } from './keyed-curve.ts';
import { plus, type Spot, spot } from './space.ts';
import { bodyMm, type Legs, type Stance, standLeg } from './stance.ts';
import type { Timing } from './timing.ts';
import type { SwingShape } from './traits.ts';
import type { Trunk } from './trunk.ts';

export type Leg = Legs;
export type Arm = {
  readonly shoulder: Spot;
  readonly elbow: Spot;
  readonly wrist: Spot;
  readonly hand: Spot;
};
export type Limbs = {
  readonly leadLeg: Leg;
  readonly trailLeg: Leg;
  readonly leadArm: Arm;
  readonly trailArm: Arm;
};

/** Legs stand on still ankles (the trail heel comes up after impact); arms reach from the shoulders to the grip. */
export function limbMotion(
  shape: SwingShape,
  stance: Stance,
  at: Timing,
): (timeS: number, trunk: Trunk, club: Club) => Limbs {
  const size = shape.bodySize;
  const finishLift = Math.max(15, shape.trailHeelLiftFinishMm);
  const lift = keyedCurve([
    [at.leadArmParallelDown, 0],
    [at.impact, Math.max(0, Math.min(finishLift, shape.trailHeelLiftImpactMm))],
    [at.finish, finishLift],
  ]);
  const inward = keyedCurve([
    [at.start, 0],
    [at.leadArmParallelDown, 0],
    [at.finish, 1],
  ]);
  return (timeS, trunk, club) => {
    const swung = inward(timeS) * Math.min(1, finishLift / 100);
    const pole = spot(-0.25 + 1.5 * swung, 0, 1 - 0.4 * swung);
    const leg = (side: 1 | -1, heelMm: number, liftMm: number, towards: Spot) =>
      standLeg(size, trunk.hipMiddle, trunk.hipAcross, side, heelMm, liftMm, towards);
    return {
      leadLeg: leg(1, stance.leadHeelMm, 0, spot(0.25, 0, 1)),
      trailLeg: leg(-1, stance.trailHeelMm, lift(timeS), pole),
      leadArm: arm(size, trunk, 1, club, 20, spot(0.35, -0.6, 0.2)),
      trailArm: arm(size, trunk, -1, club, 95, spot(-0.5, -1, 0.1)),
    };
  };
}

function arm(size: number, trunk: Trunk, side: 1 | -1, club: Club, downGripMm: number, pole: Spot): Arm {
  const shoulder = plus(trunk.shoulderMiddle, trunk.shoulderAcross, side * bodyMm.shoulderJoint * size);
  const wrist = plus(club.gripEnd, club.direction, downGripMm);
  return {
    shoulder,
    elbow: bendJoint(shoulder, wrist, bodyMm.upperArm * size, bodyMm.forearm * size, pole),
    wrist,
    hand: plus(wrist, club.direction, 62),
  };
}
