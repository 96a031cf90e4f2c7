import { type Delivery, deliver, deliveryS } from './delivery.ts';
import { plus, radians, type Spot, spot } from './space.ts';
import { headBehindBallMm, headOverSoleMm, type Stance } from './stance.ts';
import { rodAt, type SwingPlane, swingPlane } from './swing-plane.ts';
import type { SwingShape } from './traits.ts';

/** The delivery in space: its plane, and the hub round which the hands go, at a time in seconds from impact. */
export type Release = {
  readonly plane: SwingPlane;
  readonly delivery: Delivery;
  readonly hubAt: (timeS: number) => Spot;
  readonly hubVelocity: Spot;
};

export const armsMm = 640;
/** The hinge between arms and club: the middle of both wrists, down the grip from its butt. */
export const hingeDownGripMm = 70;

/** The hub moves 0.3 m/s forward and 0.4 up through impact (design of the truth test; common practice, no source). */
const hubSpeed = { along: 300, up: 400 } as const;
// Shoulders and arms about the hub: from memory of the classical models; an iron of .42 kg: common practice.
const armInertia = 1.15;
const armMoment = 2.4;
const clubKg = 0.42;

/** How the club comes down and through: the face meets the ball, the handle leads by its lean, the grip end comes from its place. */
export function releaseOf(shape: SwingShape, stance: Stance): Release {
  const plane = swingPlane(shape.planeDeg, shape.swingDirectionDeg);
  const clubMm = shape.clubLengthMm - hingeDownGripMm;
  const slope = Math.sin(radians(shape.planeDeg));
  // The lean is what a camera face-on sees of the club in its turned plane.
  const lean = Math.tan(radians(shape.leanImpactDeg));
  const theta2 = Math.atan((plane.up.x - lean * plane.up.y) / plane.along.x);
  const head = spot(headBehindBallMm, headOverSoleMm + shape.soleHeightMm, stance.ball.z + shape.headOutMm);
  const hands = plus(head, rodAt(plane, theta2), -clubMm);
  const hubMm = stance.neckMm + shape.neckToImpactMm + shape.hubAheadMm;
  const theta1 = Math.asin(Math.max(-0.6, Math.min(0.6, (hands.x - hubMm) / armsMm)));
  const hub = plus(hands, rodAt(plane, theta1), -armsMm);
  const hubVelocity = plus(plus(spot(0, 0, 0), plane.along, hubSpeed.along), plane.up, hubSpeed.up);
  const hubAt = (timeS: number) => plus(hub, hubVelocity, timeS);

  const atImpact = { theta1, theta2, omega1: shape.armSpeedRadS, omega2: shape.clubSpeedRadS };
  const wanted =
    shape.gripEndShaftParallelDownMm - hingeDownGripMm * plane.along.x - hubAt(-deliveryS(atImpact)).x;
  const delivery = deliver({
    body: {
      armM: armsMm / 1000,
      clubM: clubMm / 1000,
      armInertia,
      armMoment,
      clubKg,
      clubMiddleM: (0.735 * clubMm) / 1000,
      clubInertia: clubKg * 0.713 * (clubMm / 1000) ** 2,
      gravity: 9.81 * slope,
    },
    atImpact,
    armsAtShaftParallel: angleFor(plane, wanted / armsMm),
    speedKept: shape.speedKept,
  });
  return { plane, delivery, hubAt, hubVelocity };
}

/** The angle at which a rod of length 1 in the plane reaches so far along the target line. */
function angleFor(plane: SwingPlane, reach: number): number {
  const far = Math.hypot(plane.along.x, plane.up.x);
  return Math.asin(Math.max(-0.95, Math.min(0.95, reach / far))) + Math.atan2(plane.up.x, plane.along.x);
}
