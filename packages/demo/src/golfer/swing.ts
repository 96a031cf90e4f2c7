import { ballSpot, type Club, clubMotion } from './club-motion.ts';
import { type Limbs, limbMotion } from './limbs.ts';
import { plus, type Spot, spot } from './space.ts';
import { type GolferCause, swingShape } from './swing-shape.ts';
import { timing } from './timing.ts';
import { type Trunk, trunkMotion } from './trunk.ts';

/** Everything about the golfer at one instant, in mm, right-handed. */
export type Pose = Limbs & {
  readonly trunk: Trunk;
  readonly club: Club;
  readonly ball: Spot;
  readonly leadThighInside: Spot;
};

export type Swing = {
  readonly cause: GolferCause;
  readonly hand: 'right' | 'left';
  readonly durationS: number;
  readonly poseAt: (timeS: number) => Pose;
};

const thighHalfWidthMm = 62;
/** A struck 8-iron ball leaves at about 50 m/s, 18 degrees up [from memory]; it is out of the picture in three frames. */
const ballSpeed = { along: 46_000, up: 15_000 };

/** One swing of the invented golfer: a pure function of time, from its cause and hand. */
export function makeSwing(cause: GolferCause, hand: 'right' | 'left'): Swing {
  const shape = swingShape(cause);
  const trunkAt = trunkMotion(shape);
  const clubAt = clubMotion(shape, trunkAt);
  const limbsAt = limbMotion(shape);
  const poseAt = (timeS: number): Pose => {
    const trunk = trunkAt(timeS);
    const club = clubAt(timeS);
    const limbs = limbsAt(timeS, trunk, club);
    const flownS = Math.max(0, timeS - timing.impact);
    const thigh = plus(limbs.leadLeg.hip, plus(limbs.leadLeg.knee, limbs.leadLeg.hip, -1), 0.35);
    return {
      ...limbs,
      trunk,
      club,
      ball: plus(ballSpot, spot(ballSpeed.along * flownS, ballSpeed.up * flownS, 0)),
      leadThighInside: plus(thigh, spot(-thighHalfWidthMm, 0, 0)),
    };
  };
  return { cause, hand, durationS: timing.end, poseAt };
}
