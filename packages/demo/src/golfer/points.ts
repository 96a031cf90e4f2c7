import type { View } from './camera.ts';
import { between, plus, spot } from './space.ts';
import type { Pose } from './swing.ts';

/** Half the breadth of a shoe at its tip: the toe line touches the tips. */
const shoeTipMm = 43;

/** The points a coach can mark, as places in mm. */
export function spotsOf(pose: Pose) {
  return {
    ball: pose.ball,
    'lead-heel': pose.leadLeg.heel,
    'trail-heel': pose.trailLeg.heel,
    'lead-ankle': pose.leadLeg.ankle,
    'trail-ankle': pose.trailLeg.ankle,
    'hip-middle': pose.trunk.hipMiddle,
    'neck-base': pose.trunk.neckBase,
    'head-centre': pose.trunk.headCentre,
    'lead-shoulder': pose.leadArm.shoulder,
    'lead-elbow': pose.leadArm.elbow,
    'lead-wrist': pose.leadArm.wrist,
    'trail-wrist': pose.trailArm.wrist,
    'grip-end': pose.club.gripEnd,
    clubhead: pose.club.head,
    'shaft-mid': between(pose.club.gripEnd, pose.club.head, 0.5),
    'lead-thigh-inside': pose.leadThighInside,
    hands: between(pose.leadArm.hand, pose.trailArm.hand, 0.5),
    buckle: pose.trunk.buckle,
    'seat-line': pose.trunk.seat,
    'thigh-front': pose.thighFront,
    // The tip of the trail shoe: the one that stands nearer to a camera behind the player.
    'toe-line': plus(pose.trailLeg.toe, spot(0, 0, shoeTipMm)),
    'target-stick': pose.stick[0],
    'target-stick-ahead': pose.stick[1],
  };
}

export type GolferPoint = keyof ReturnType<typeof spotsOf>;

const everywhere = [
  'ball',
  'hip-middle',
  'neck-base',
  'head-centre',
  'grip-end',
  'clubhead',
  'shaft-mid',
  'hands',
  'target-stick',
  'target-stick-ahead',
] as const;

/** What can be seen well enough to be marked in a view. */
export const pointsOfView: Readonly<Record<View, readonly GolferPoint[]>> = {
  'face-on': [
    ...everywhere,
    'lead-heel',
    'trail-heel',
    'lead-ankle',
    'trail-ankle',
    'lead-shoulder',
    'lead-elbow',
    'lead-wrist',
    'lead-thigh-inside',
  ],
  'down-the-line': [
    ...everywhere,
    'seat-line',
    'thigh-front',
    'toe-line',
    'trail-heel',
    'trail-ankle',
    'lead-wrist',
  ],
};
