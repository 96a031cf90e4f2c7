import type { Club } from './club-motion.ts';
import { type ClubAt, clubMotion } from './club-motion.ts';
import { typicalShape } from './draw-shape.ts';
import type { GolferCause } from './golfer-causes.ts';
import { type Limbs, limbMotion } from './limbs.ts';
import { releaseOf } from './release.ts';
import { plus, type Spot, spot } from './space.ts';
import { type Stance, stanceOf, thighFrontOf, thighInsideOf } from './stance.ts';
import { type Timing, timingOf } from './timing.ts';
import type { SwingShape } from './traits.ts';
import { type Trunk, trunkMotion } from './trunk.ts';

/** Everything about the golfer at one instant, in mm, right-handed. */
export type Pose = Limbs & {
  readonly trunk: Trunk;
  readonly club: Club;
  readonly ball: Spot;
  readonly leadThighInside: Spot;
  readonly thighFront: Spot;
  readonly stick: readonly [Spot, Spot];
};

export type Hand = 'right' | 'left';

export type Swing = {
  readonly cause: GolferCause;
  /** All planted causes; empty for a sound swing. */
  readonly causes: readonly GolferCause[];
  readonly hand: Hand;
  readonly shape: SwingShape;
  readonly stance: Stance;
  readonly timing: Timing;
  readonly durationS: number;
  readonly poseAt: (timeS: number) => Pose;
  readonly clubAt: ClubAt;
  /** The club as it would go on if the turf did not throw it up: what an arc is fitted to. */
  readonly clubWithoutTurf: ClubAt;
};

/** A struck 8-iron ball leaves at about 50 m/s, 18 degrees up [from memory]. */
const ballSpeed = { along: 46_000, up: 15_000 };
/** Marks never need a ball in flight; its place is followed only while it can be near the picture. */
const followedS = 0.05;

export const ballInFlight = (ball: Spot, flownS: number): Spot =>
  plus(ball, spot(ballSpeed.along * flownS, ballSpeed.up * flownS, 0));

/**
 * One swing of an invented golfer: a pure function of time.
 *
 * @param shape the golfer's traits, @param startS when the club leaves the ball, seconds from the first frame
 * @throws RangeError when such a body cannot bring the club to the ball
 */
export function swingOf(shape: SwingShape, hand: Hand, causes: readonly GolferCause[], startS = 0.3): Swing {
  const stance = stanceOf(shape);
  const release = releaseOf(shape, stance);
  const timing = timingOf(shape, release.delivery, startS);
  const trunkAt = trunkMotion(shape, stance, timing);
  const { clubAt, withoutTurf } = clubMotion(shape, stance, release, timing, trunkAt);
  const limbsAt = limbMotion(shape, stance, timing);
  const poseAt = (timeS: number): Pose => {
    const trunk = trunkAt(timeS);
    const club = clubAt(timeS);
    const limbs = limbsAt(timeS, trunk, club);
    const flownS = Math.max(0, Math.min(followedS, timeS - timing.impact));
    return {
      ...limbs,
      trunk,
      club,
      ball: ballInFlight(stance.ball, flownS),
      leadThighInside: thighInsideOf(limbs.leadLeg),
      thighFront: thighFrontOf(limbs.trailLeg),
      stick: stance.stick,
    };
  };
  const planted = causes.filter((cause) => cause !== 'none');
  return {
    cause: planted[0] ?? 'none',
    causes: planted,
    hand,
    shape,
    stance,
    timing,
    durationS: timing.end,
    poseAt,
    clubAt,
    clubWithoutTurf: withoutTurf,
  };
}

/** The typical golfer with one cause, or none: every sign half-way past its edge, nothing left to chance. */
export const makeSwing = (cause: GolferCause, hand: Hand, changes: Partial<SwingShape> = {}): Swing =>
  swingOf(typicalShape([cause], changes), hand, [cause]);
