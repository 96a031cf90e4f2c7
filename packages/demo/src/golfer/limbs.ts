import { bendJoint } from './bend-joint.ts';
import type { Club } from './club-motion.ts';
import { keyedCurve } from './keyed-curve.ts';
import { plus, type Spot, spot } from './space.ts';
import type { SwingShape } from './swing-shape.ts';
import { timing as at } from './timing.ts';
import type { Trunk } from './trunk.ts';

export type Leg = {
  readonly hip: Spot;
  readonly knee: Spot;
  readonly ankle: Spot;
  readonly heel: Spot;
  readonly toe: Spot;
};
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

/** Heels in mm from the ball line: the ball lies 105 mm inside the lead heel, within common practice for an 8-iron. */
export const leadHeelMm = 105;
export const trailHeelMm = -295;
const hipJointMm = 92;
const shoulderJointMm = 185;

/** Legs stand on still ankles (the trail heel comes up after impact); arms reach from the shoulders to the grip. */
export function limbMotion(shape: SwingShape): (timeS: number, trunk: Trunk, club: Club) => Limbs {
  const lift = keyedCurve([
    [at.leadArmParallelDown, 0],
    [at.impact, shape.trailHeelLiftFinishMm * 0.15],
    [at.finish, shape.trailHeelLiftFinishMm],
  ]);
  const inward = keyedCurve([
    [at.start, 0],
    [at.leadArmParallelDown, 0],
    [at.finish, 1],
  ]);
  return (timeS, trunk, club) => {
    const up = lift(timeS);
    const swung = inward(timeS) * Math.min(1, shape.trailHeelLiftFinishMm / 100);
    return {
      leadLeg: leg(trunk, 1, leadHeelMm, 0, spot(0.25, 0, 1)),
      trailLeg: leg(trunk, -1, trailHeelMm, up, spot(-0.25 + 1.5 * swung, 0, 1 - 0.4 * swung)),
      leadArm: arm(trunk, 1, plus(club.gripEnd, club.direction, 20), club.direction, spot(0.35, -0.6, 0.2)),
      trailArm: arm(trunk, -1, plus(club.gripEnd, club.direction, 95), club.direction, spot(-0.5, -1, 0.1)),
    };
  };
}

function leg(trunk: Trunk, side: 1 | -1, heelMm: number, liftMm: number, pole: Spot): Leg {
  const hip = plus(plus(trunk.hipMiddle, trunk.hipAcross, side * hipJointMm), spot(0, -45, 0));
  const heel = spot(heelMm + liftMm * 0.2, 22 + liftMm, -45 + liftMm * 0.35);
  const ankle = spot(heelMm + side * 8 + liftMm * 0.25, 92 + liftMm * 0.85, liftMm * 0.5);
  const toe = spot(heelMm + side * 62, 22, 195);
  return { hip, knee: bendJoint(hip, ankle, 425, 412, pole), ankle, heel, toe };
}

function arm(trunk: Trunk, side: 1 | -1, wrist: Spot, direction: Spot, pole: Spot): Arm {
  const shoulder = plus(trunk.shoulderMiddle, trunk.shoulderAcross, side * shoulderJointMm);
  return {
    shoulder,
    elbow: bendJoint(shoulder, wrist, 300, 285, pole),
    wrist,
    hand: plus(wrist, direction, 62),
  };
}
