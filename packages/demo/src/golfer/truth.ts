import { type Camera, type Pixel, project } from './camera.ts';
import { ballSpot } from './club-motion.ts';
import { frameOfMoments, type Moment, moments } from './moments.ts';
import { between, type Spot, spot } from './space.ts';
import type { Pose, Swing } from './swing.ts';
import type { GolferCause } from './swing-shape.ts';
import { trueLengths } from './true-lengths.ts';

export type GolferPoint = keyof ReturnType<typeof spotsOf>;

/** What is true of a rendered clip. Pixels of the upright picture; `trueMm` in mm (degrees and percent where named). */
export type Truth = {
  readonly file: string;
  readonly hand: 'right' | 'left';
  readonly view: 'face-on';
  readonly club: '8-iron';
  readonly cause: GolferCause;
  readonly fps: number;
  readonly frames: number;
  readonly width: number;
  readonly height: number;
  readonly positions: Readonly<Record<Moment, number>>;
  readonly points: Readonly<Record<Moment, Readonly<Record<GolferPoint, Pixel>>>>;
  /** The stick on the ground beside the ball, both ends, and its true length. */
  readonly stick: { readonly ends: readonly [Pixel, Pixel]; readonly lengthMm: number };
  readonly trueMm: Readonly<Record<string, number>>;
};

export const stickLengthMm = 1200;
export const stickEnds: readonly [Spot, Spot] = [
  spot(-stickLengthMm / 2, 5, ballSpot.z + 140),
  spot(stickLengthMm / 2, 5, ballSpot.z + 140),
];

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
    'lead-wrist': pose.leadArm.wrist,
    'trail-wrist': pose.trailArm.wrist,
    'grip-end': pose.club.gripEnd,
    clubhead: pose.club.head,
    'shaft-mid': between(pose.club.gripEnd, pose.club.head, 0.5),
    'lead-thigh-inside': pose.leadThighInside,
    hands: between(pose.leadArm.hand, pose.trailArm.hand, 0.5),
  };
}

/** Pixel places of all points on one frame. */
export function pixelsOf(swing: Swing, camera: Camera, timeS: number): Record<GolferPoint, Pixel> {
  const round = (value: number) => Math.round(value * 100) / 100;
  const pixel = (at: Spot): Pixel => {
    const [x, y] = project(camera, swing.hand, at);
    return [round(x), round(y)];
  };
  const entries = Object.entries(spotsOf(swing.poseAt(timeS))).map(([name, at]) => [name, pixel(at)]);
  return Object.fromEntries(entries) as Record<GolferPoint, Pixel>;
}

/** The truth of a clip: frames of the moments, pixels of the points on them, and the true lengths. */
export function truthOf(swing: Swing, camera: Camera, fps: number, file: string): Truth {
  const positions = frameOfMoments(swing, fps);
  const points = Object.fromEntries(
    moments.map((moment) => [moment, pixelsOf(swing, camera, positions[moment] / fps)]),
  ) as Record<Moment, Record<GolferPoint, Pixel>>;
  return {
    file,
    hand: swing.hand,
    view: 'face-on',
    club: '8-iron',
    cause: swing.cause,
    fps,
    frames: Math.round(swing.durationS * fps),
    width: camera.widthPx,
    height: camera.heightPx,
    positions,
    points,
    stick: {
      ends: [project(camera, swing.hand, stickEnds[0]), project(camera, swing.hand, stickEnds[1])],
      lengthMm: stickLengthMm,
    },
    trueMm: trueLengths(swing, positions, fps),
  };
}
