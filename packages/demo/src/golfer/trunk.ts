import { keyedCurve } from './keyed-curve.ts';
import { minus, plus, radians, type Spot, spot, unitOf } from './space.ts';
import { bodyMm, type Stance } from './stance.ts';
import type { Timing } from './timing.ts';
import type { SwingShape } from './traits.ts';

/** Hips, collar and head with the lines across them; `hipAcross` and `shoulderAcross` point from middle to lead side. */
export type Trunk = {
  readonly hipMiddle: Spot;
  readonly neckBase: Spot;
  readonly headCentre: Spot;
  readonly shoulderMiddle: Spot;
  readonly hipAcross: Spot;
  readonly shoulderAcross: Spot;
  readonly hipTurnDeg: number;
  readonly shoulderTurnDeg: number;
  /** The belt buckle, in front of the hips: it moves along the line when they only turn. */
  readonly buckle: Spot;
  /** The rearmost edge of the seat as seen along the line. */
  readonly seat: Spot;
};

/** How far an oval body reaches across a line of sight when it is turned by an angle. */
export const ovalReach = (halfWidth: number, halfDepth: number, turnDeg: number): number =>
  Math.hypot(halfDepth * Math.cos(radians(turnDeg)), halfWidth * Math.sin(radians(turnDeg)));

const seatReach = (turnDeg: number) => ovalReach(bodyMm.pelvisHalfWidth, bodyMm.pelvisHalfDepth, turnDeg);

/** The movement of the trunk through a swing: places by the traits, turns as in any sound swing. */
export function trunkMotion(shape: SwingShape, stance: Stance, at: Timing): (timeS: number) => Trunk {
  const size = shape.bodySize;
  const along = (address: number, top: number, down: number, impact: number, finish: number) =>
    keyedCurve([
      [at.start, address],
      [at.top - 0.02, top],
      [at.leadArmParallelDown, down],
      [at.impact, impact],
      [at.finish, finish],
    ]);
  const trunkMm = bodyMm.trunk * size;
  const bendDeg = shape.trunkBendDeg;
  const high = (deg: number) => trunkMm * Math.cos(radians(deg));

  const hipTop = stance.hipMm + shape.hipToTopMm;
  const neckTop = hipTop + Math.tan(radians(shape.trunkLeanTopDeg)) * high(bendDeg);
  const hipX = along(
    stance.hipMm,
    hipTop,
    hipTop + shape.hipFromTopMm,
    stance.hipMm + shape.hipToImpactMm,
    shape.hipFinishPastBallMm,
  );
  const neckX = along(
    stance.neckMm,
    neckTop,
    neckTop + shape.neckFromTopMm,
    stance.neckMm + shape.neckToImpactMm,
    shape.hipFinishPastBallMm - 45,
  );
  const behind = -shape.headBehindNeckMm;
  const headX = along(behind, behind, behind, behind - 4, 6);

  const bend = along(bendDeg, bendDeg - 1, bendDeg, bendDeg - shape.bendLossDeg, 8);
  const hipY0 = bodyMm.hipHeight * size;
  const neckY0 = hipY0 + high(bendDeg);
  const neckY = along(
    neckY0,
    neckY0 + shape.neckRiseTopMm,
    neckY0 + shape.neckRiseTopMm + shape.neckRiseLeadArmDownMm,
    neckY0 + shape.neckRiseImpactMm,
    hipY0 + 20 + high(8),
  );
  const hipZ0 = bodyMm.hipDepth * size;
  const hipZImpact =
    hipZ0 + shape.seatTowardBallMm + (seatReach(-shape.hipTurnImpactDeg) - seatReach(0)) * size;
  const hipZ = along(hipZ0, hipZ0 - 8, hipZ0 + 0.4 * (hipZImpact - hipZ0), hipZImpact, hipZ0 + 55);
  const turning = (
    address: number,
    top: number,
    down: number,
    impact: number,
    through: number,
    finish: number,
  ) =>
    keyedCurve([
      [at.start, address],
      [at.top - 0.02, top],
      [at.leadArmParallelDown, down],
      [at.impact, impact],
      [at.impact + 0.12, through],
      [at.finish, finish],
    ]);
  const hipTurn = turning(0, 42, 12, -shape.hipTurnImpactDeg, -28 - shape.hipTurnImpactDeg, -92);
  const shoulderTurn = turning(2, 88, 52, -22, -88, -116);
  const tilt = along(0.13, -0.02, 0.12, 0.3, 0.05);
  const headAhead = along(86, 86, 86, 86, 38);

  return (timeS) => {
    const lean = radians(bend(timeS));
    const neckBase = spot(neckX(timeS), neckY(timeS), hipZ(timeS) + trunkMm * Math.sin(lean));
    const hipMiddle = spot(hipX(timeS), neckBase.y - trunkMm * Math.cos(lean), hipZ(timeS));
    const headCentre = plus(neckBase, spot(headX(timeS), 141 * size, headAhead(timeS) * size));
    const spine = unitOf(minus(neckBase, hipMiddle));
    const ahead = unitOf(spot(0, -spine.z, spine.y));
    const hipTurnDeg = hipTurn(timeS);
    const shoulderTurnDeg = shoulderTurn(timeS);
    const hips = radians(hipTurnDeg);
    const chest = radians(shoulderTurnDeg);
    const level = plus(spot(Math.cos(chest), 0, 0), ahead, Math.sin(chest));
    return {
      hipMiddle,
      neckBase,
      headCentre,
      shoulderMiddle: plus(neckBase, spine, -84 * size),
      hipAcross: spot(Math.cos(hips), 0, Math.sin(hips)),
      shoulderAcross: unitOf(plus(level, spine, tilt(timeS))),
      hipTurnDeg,
      shoulderTurnDeg,
      buckle: plus(hipMiddle, spot(-Math.sin(hips), 0, Math.cos(hips)), bodyMm.buckleAhead * size),
      seat: plus(hipMiddle, spot(0, -70 * size, -seatReach(hipTurnDeg) * size)),
    };
  };
}
