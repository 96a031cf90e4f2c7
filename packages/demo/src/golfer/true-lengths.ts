import type { Moment } from './moments.ts';
import type { Pose, Swing } from './swing.ts';

/** True lengths of a swing on its frames, in mm along the target line (+ towards the target), without lens or marks. */
export function trueLengths(
  swing: Swing,
  frameTimes: Readonly<Record<Moment, number>>,
  lowPointAheadMm: number,
): Record<string, number> {
  const at = (moment: Moment) => swing.poseAt(frameTimes[moment]);
  const address = at('address');
  const top = at('top');
  const down = at('lead-arm-parallel-down');
  const impact = at('impact');
  const finish = at('finish');
  const hip = (pose: Pose) => pose.trunk.hipMiddle.x;
  const neck = (pose: Pose) => pose.trunk.neckBase.x;
  const head = (pose: Pose) => pose.trunk.headCentre.x;
  const ankles = address.leadLeg.ankle.x - address.trailLeg.ankle.x;
  const lean = Math.atan2(
    address.club.gripEnd.x - address.club.head.x,
    address.club.gripEnd.y - address.club.head.y,
  );
  const lengths = {
    ballInsideLeadHeelMm: address.leadLeg.heel.x - address.ball.x,
    ankleDistanceMm: ankles,
    hipMiddleAlongAnkleLinePercent: (100 * (hip(address) - address.trailLeg.ankle.x)) / ankles,
    neckBaseBehindBallMm: address.ball.x - neck(address),
    headBehindBallMm: address.ball.x - head(address),
    handleAheadOfLeadThighInsideMm: address.club.gripEnd.x - address.leadThighInside.x,
    handleAheadOfBallMm: address.club.gripEnd.x - address.ball.x,
    shaftLeanAddressDeg: (lean * 180) / Math.PI,
    hipShiftAddressToTopMm: hip(top) - hip(address),
    neckShiftAddressToTopMm: neck(top) - neck(address),
    headShiftAddressToTopMm: head(top) - head(address),
    hipShiftTopToLeadArmParallelDownMm: hip(down) - hip(top),
    neckShiftTopToLeadArmParallelDownMm: neck(down) - neck(top),
    headShiftTopToLeadArmParallelDownMm: head(down) - head(top),
    hipShiftAddressToImpactMm: hip(impact) - hip(address),
    gripEndToBallLineAtShaftParallelDownMm: at('shaft-parallel-down').club.gripEnd.x - address.ball.x,
    hipMiddlePastBallAtFinishMm: hip(finish) - address.ball.x,
    hipMiddlePastLeadAnkleAtFinishMm: hip(finish) - finish.leadLeg.ankle.x,
    lowPointAheadMm,
  };
  return Object.fromEntries(
    Object.entries(lengths).map(([name, value]) => [name, Math.round(value * 10) / 10]),
  );
}
