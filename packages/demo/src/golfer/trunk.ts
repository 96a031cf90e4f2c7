import { keyedCurve } from './keyed-curve.ts';
import { minus, plus, radians, type Spot, spot, unitOf } from './space.ts';
import type { SwingShape } from './swing-shape.ts';
import { timing as at } from './timing.ts';

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
};

/** The movement of the trunk through a swing: places along the line by the knobs, turns as in any sound swing. */
export function trunkMotion(shape: SwingShape): (timeS: number) => Trunk {
  const hipTopMm = shape.hipAddressMm + shape.hipToTopMm;
  const neckTopMm = shape.neckAddressMm + shape.neckToTopMm;
  const hipX = along(
    shape.hipAddressMm,
    hipTopMm,
    hipTopMm + shape.hipFromTopMm,
    shape.hipImpactMm,
    shape.hipFinishMm,
  );
  const neckX = along(
    shape.neckAddressMm,
    neckTopMm,
    neckTopMm + shape.neckFromTopMm,
    shape.neckImpactMm,
    shape.neckFinishMm,
  );
  const headBehindMm = shape.headAddressMm - shape.neckAddressMm;
  const headX = along(headBehindMm, headBehindMm, headBehindMm, headBehindMm - 8, 6);
  const hipTurn = along(0, 42, 12, -34, -92);
  const shoulderTurn = along(2, 88, 52, -22, -112);
  const tilt = along(0.13, -0.02, 0.12, 0.3, 0.05);
  const rise = along(0, 0, 0, 0, 1);
  return (timeS) => {
    const up = rise(timeS);
    const hipMiddle = spot(hipX(timeS), 945 + 25 * up, -85 + 55 * up);
    const neckBase = spot(neckX(timeS), 1392 + 75 * up, 205 - 175 * up);
    const headCentre = plus(neckBase, spot(headX(timeS), 141, 86 - 48 * up));
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
      shoulderMiddle: plus(neckBase, spine, -84),
      hipAcross: spot(Math.cos(hips), 0, Math.sin(hips)),
      shoulderAcross: unitOf(plus(level, spine, tilt(timeS))),
      hipTurnDeg,
      shoulderTurnDeg,
    };
  };
}

const along = (address: number, top: number, down: number, impact: number, finish: number) =>
  keyedCurve([
    [at.start, address],
    [at.top - 0.02, top],
    [at.leadArmParallelDown, down],
    [at.impact, impact],
    [at.finish, finish],
  ]);
