import { type Key, keyedCurve } from './keyed-curve.ts';
import { armsMm, hingeDownGripMm, type Release } from './release.ts';
import { minus, plus, radians, type Spot, spot } from './space.ts';
import type { Stance } from './stance.ts';
import { rodAt, swingPlane } from './swing-plane.ts';
import type { Timing } from './timing.ts';
import type { SwingShape } from './traits.ts';
import type { Trunk } from './trunk.ts';

export type Club = { readonly gripEnd: Spot; readonly head: Spot; readonly direction: Spot };
export type ClubAt = (timeS: number) => Club;

/**
 * The club through the whole swing: curves through the turning points, joined with equal speeds to the forward dynamics
 * from shaft-parallel-down until after impact.
 *
 * @returns the motion, and the same without the kink that turf gives it after the ball
 */
export function clubMotion(
  shape: SwingShape,
  stance: Stance,
  release: Release,
  at: Timing,
  trunkAt: (timeS: number) => Trunk,
): { readonly clubAt: ClubAt; readonly withoutTurf: ClubAt } {
  const { delivery } = release;
  const dynamic = (timeS: number) => timeS >= at.shaftParallelDown && timeS <= at.delivered;
  const angles = angleCurves(shape, stance, release, at);
  const hubAt = hubCurve(release, at, shape, trunkAt);
  const slopes = planeCurves(shape, stance, at);
  const radius = keyedCurve([
    [at.start, armsMm],
    [at.leadArmParallelBack, 550],
    [at.top, 445],
    [at.leadArmParallelDown, 520],
    [at.shaftParallelDown, armsMm],
    [at.delivered, armsMm],
    [at.delivered + 0.05, 500],
    [at.released, 420],
    [at.finish, 330],
  ]);
  const handsAt = (timeS: number): Spot => {
    if (dynamic(timeS)) {
      const { theta1 } = delivery.at(timeS - at.impact);
      return plus(release.hubAt(timeS - at.impact), rodAt(release.plane, theta1), armsMm);
    }
    const plane = swingPlane(slopes.arms(timeS), slopes.direction(timeS));
    return plus(hubAt(timeS), rodAt(plane, angles.arms(timeS)), radius(timeS));
  };
  const directionAt = (timeS: number): Spot =>
    dynamic(timeS)
      ? rodAt(release.plane, delivery.at(timeS - at.impact).theta2)
      : rodAt(swingPlane(slopes.club(timeS), slopes.direction(timeS)), angles.club(timeS));

  // The difference between the arms at address and on their later path fades out on the way back.
  const settle = keyedCurve([
    [at.start, 1],
    [at.leadArmParallelBack, 0],
  ]);
  const reach = shape.clubLengthMm - hingeDownGripMm;
  const atAddress = rodAt(swingPlane(stance.shaftPlaneDeg, 0), stance.shaftRad);
  const missing = minus(plus(stance.clubhead, atAddress, -reach), handsAt(at.start));
  const clubWith =
    (liftMm: (timeS: number, headMm: number) => number): ClubAt =>
    (timeS) => {
      const direction = directionAt(timeS);
      const hands = plus(handsAt(timeS), missing, settle(timeS));
      const lift = spot(0, liftMm(timeS, plus(hands, direction, reach).x), 0);
      const gripEnd = plus(plus(hands, direction, -hingeDownGripMm), lift);
      return { gripEnd, head: plus(gripEnd, direction, shape.clubLengthMm), direction };
    };
  const fade = keyedCurve([
    [at.impact + 0.02, 1],
    [at.released, 0],
  ]);
  const kink = (timeS: number, headMm: number) =>
    timeS <= at.impact ? 0 : shape.turfKinkRad * fade(timeS) * Math.max(0, Math.min(350, headMm));
  return { clubAt: clubWith(kink), withoutTurf: clubWith(() => 0) };
}

/** Angles of arms and club in their planes, in radians, before and after the delivery. */
function angleCurves(shape: SwingShape, stance: Stance, release: Release, at: Timing) {
  const { delivery } = release;
  const came = delivery.at(delivery.fromS);
  const gone = delivery.at(delivery.untilS);
  const addressArms = Math.asin(
    Math.max(-0.6, Math.min(0.6, (stance.gripEndMm - stance.neckMm - shape.hubAheadMm) / armsMm)),
  );
  const armsDown = -80;
  const back = (keys: readonly Key[], last: number) => keyedCurve(keys, { last });
  const through = (keys: readonly Key[], first: number) => keyedCurve(keys, { first });
  const armsBack = back(
    [
      [at.start, addressArms],
      [at.shaftParallelBack, radians(-33)],
      [at.leadArmParallelBack, radians(-84)],
      [at.top, radians(-128)],
      [at.leadArmParallelDown, radians(armsDown)],
      [at.shaftParallelDown, came.theta1],
    ],
    came.omega1,
  );
  const clubBack = back(
    [
      [at.start, stance.shaftRad],
      [at.shaftParallelBack, radians(-90)],
      [at.leadArmParallelBack, radians(-172)],
      [at.top, radians(-264)],
      [at.leadArmParallelDown, radians(armsDown - shape.lagDeg)],
      [at.shaftParallelDown, came.theta2],
    ],
    came.omega2,
  );
  const armsThrough = through(
    [
      [at.delivered, gone.theta1],
      [at.released, radians(122)],
      [at.finish, radians(158)],
    ],
    gone.omega1,
  );
  const clubThrough = through(
    [
      [at.delivered, gone.theta2],
      [at.released, radians(205)],
      [at.finish, radians(262)],
    ],
    gone.omega2,
  );
  return {
    arms: (timeS: number) => (timeS < at.impact ? armsBack(timeS) : armsThrough(timeS)),
    club: (timeS: number) => (timeS < at.impact ? clubBack(timeS) : clubThrough(timeS)),
  };
}

/** The hub of the arms goes with the collar; it joins the straight way it has through impact with equal speed. */
function hubCurve(
  release: Release,
  at: Timing,
  shape: SwingShape,
  trunkAt: (timeS: number) => Trunk,
): (timeS: number) => Spot {
  const { hubAt, hubVelocity, delivery } = release;
  const came = hubAt(delivery.fromS);
  const gone = hubAt(delivery.untilS);
  const neck = (timeS: number) => trunkAt(timeS).neckBase;
  const outMm = shape.handsOutMm;
  const out = { y: outMm * Math.cos(radians(shape.planeDeg)), z: outMm * Math.sin(radians(shape.planeDeg)) };
  const axis = (of: 'x' | 'y' | 'z', start: number, top: number, down: number, finish: number) => {
    const before = keyedCurve(
      [
        [at.start, start],
        [at.top, top],
        [at.leadArmParallelDown, down],
        [at.shaftParallelDown, came[of]],
      ],
      { last: hubVelocity[of] },
    );
    const after = keyedCurve(
      [
        [at.delivered, gone[of]],
        [at.finish, finish],
      ],
      { first: hubVelocity[of] },
    );
    return (timeS: number) => (timeS < at.impact ? before(timeS) : after(timeS));
  };
  const ahead = shape.hubAheadMm;
  const x = axis(
    'x',
    neck(at.start).x + ahead,
    neck(at.top).x + ahead - 70,
    neck(at.leadArmParallelDown).x + ahead - 30,
    neck(at.finish).x + 22,
  );
  const y = axis('y', came.y, came.y - 5, came.y - 15 + out.y, came.y + 60);
  const z = axis('z', came.z, came.z + 135, came.z + 85 + out.z, came.z - 40);
  return (timeS) => spot(x(timeS), y(timeS), z(timeS));
}

/** Slopes of the planes of arms and club, and their direction, in degrees; one plane through impact. */
function planeCurves(shape: SwingShape, stance: Stance, at: Timing) {
  const { planeDeg, swingDirectionDeg } = shape;
  return {
    arms: keyedCurve([
      [at.start, planeDeg],
      [at.top, planeDeg + 4],
      [at.leadArmParallelDown, planeDeg + 4],
      [at.shaftParallelDown, planeDeg],
      [at.delivered, planeDeg],
      [at.finish, planeDeg - 4],
    ]),
    club: keyedCurve([
      [at.start, stance.shaftPlaneDeg],
      [at.top, planeDeg],
      [at.leadArmParallelDown, stance.shaftPlaneDeg + shape.shaftSteeperDeg],
      [at.shaftParallelDown, planeDeg],
      [at.delivered, planeDeg],
      [at.finish, planeDeg - 8],
    ]),
    direction: keyedCurve([
      [at.start, 0],
      [at.shaftParallelBack, shape.takeawayDirectionDeg],
      [at.top, 0],
      [at.leadArmParallelDown, swingDirectionDeg],
      [at.delivered, swingDirectionDeg],
      [at.finish, 0],
    ]),
  };
}
