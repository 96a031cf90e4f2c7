import { type Key, keyedCurve } from './keyed-curve.ts';
import { minus, plus, radians, type Spot, spot } from './space.ts';
import type { SwingShape } from './swing-shape.ts';
import { timing as at } from './timing.ts';
import type { Trunk } from './trunk.ts';

/** 8-iron, butt to sole [common practice], and where the middle of both hands holds it below the butt. */
export const clubLengthMm = 927;
const handsBelowButtMm = 70;
const planeDeg = 62;
const armPlaneDeg = 76;
/** Radius of the path of the hands round the hub between the shoulders. */
const armMm = 560;
const headBehindBallMm = -33;
export const ballSpot: Spot = spot(0, 21.3, 735);

export type Club = { readonly gripEnd: Spot; readonly head: Spot; readonly direction: Spot };

/** Direction from butt to head when the shaft is turned by an angle in its plane; 0 points at the ball, + at the target. */
function shaftDirection(deg: number): Spot {
  const a = radians(deg);
  const plane = radians(planeDeg);
  return spot(Math.sin(a), -Math.cos(a) * Math.sin(plane), Math.cos(a) * Math.cos(plane));
}

function armDirection(deg: number): Spot {
  const a = radians(deg);
  const plane = radians(armPlaneDeg);
  return spot(Math.sin(a), -Math.cos(a) * Math.sin(plane), Math.cos(a) * Math.cos(plane));
}

/**
 * Arms and club as two hinged links in their planes, driven by smooth angle curves (kinematics, not forces): the arms slow
 * down as the club is released, the clubhead passes the ball at about 33 m/s, and its low point follows from the geometry.
 */
export function clubMotion(shape: SwingShape, trunk: (timeS: number) => Trunk): (timeS: number) => Club {
  const headAt = spot(headBehindBallMm, 22, ballSpot.z);
  const grip = clubLengthMm - handsBelowButtMm;
  const neckX = (timeS: number) => trunk(timeS).neckBase.x;
  const reach = (handsX: number, timeS: number) =>
    (Math.asin((handsX - neckX(timeS) - hubAheadMm) / armMm) * 180) / Math.PI;

  const addressDeg = (Math.asin((headAt.x - shape.gripEndAddressMm) / clubLengthMm) * 180) / Math.PI;
  const addressHands = plus(headAt, shaftDirection(addressDeg), -grip);
  const impactHands = plus(headAt, shaftDirection(-shape.leanImpactDeg), -grip);
  const armAddress = reach(addressHands.x, at.start);
  const armImpact = reach(impactHands.x, at.impact);
  const armDown = reach(shape.gripEndShaftParallelDownMm - handsBelowButtMm, at.shaftParallelDown);

  const arm = keyedCurve([
    [at.start, armAddress],
    [at.shaftParallelBack, -33],
    [at.leadArmParallelBack, -84],
    [at.top, -128],
    [at.leadArmParallelDown, -80],
    [at.shaftParallelDown, armDown],
    [at.impact, armImpact],
    [at.shaftParallelThrough, armImpact + 20],
    [at.finish, 158],
  ]);
  const shaft = keyedCurve([
    [at.start, addressDeg],
    [at.shaftParallelBack, -90],
    [at.leadArmParallelBack, -172],
    [at.top, -264],
    [at.leadArmParallelDown, -80 - shape.lagDeg],
    [at.shaftParallelDown, -90],
    [at.impact, -shape.leanImpactDeg],
    [at.shaftParallelThrough, 88],
    [at.finish, 262],
  ]);
  const radius = keyedCurve([
    [at.start, armMm],
    [at.leadArmParallelBack, armMm],
    [at.top, 500],
    [at.leadArmParallelDown, 540],
    [at.shaftParallelDown, armMm],
    [at.shaftParallelThrough, armMm],
    [at.finish, 330],
  ]);
  const hubOffset = minus(plus(impactHands, armDirection(armImpact), -armMm), trunk(at.impact).neckBase);
  const hands = (timeS: number) =>
    plus(plus(trunk(timeS).neckBase, hubOffset), armDirection(arm(timeS)), radius(timeS));
  const settle = keyedCurve(settling);
  const missing = minus(addressHands, hands(at.start));
  return (timeS) => {
    const direction = shaftDirection(shaft(timeS));
    const middle = plus(hands(timeS), missing, settle(timeS));
    const gripEnd = plus(middle, direction, -handsBelowButtMm);
    return { gripEnd, head: plus(gripEnd, direction, clubLengthMm), direction };
  };
}

/** The hub of the arms is a little target-side of the collar. */
const hubAheadMm = 22;
/** The difference between the arms at address and on their later path fades out on the way back. */
const settling: readonly Key[] = [
  [at.start, 1],
  [at.leadArmParallelBack, 0],
];
