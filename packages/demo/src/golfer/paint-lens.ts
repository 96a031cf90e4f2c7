import { type Camera, type Pixel, pixelsPerMm, project, seenAtS } from './camera.ts';
import { between, lengthOf, plus, type Spot, spot, unitOf } from './space.ts';
import type { Pose, Swing } from './swing.ts';
import { sceneOf } from './truth.ts';

/** How a place in mm becomes a pixel and a length in mm at that place a length in pixels. */
export type Lens = {
  readonly faceOn: boolean;
  readonly pixel: (at: Spot) => Pixel;
  readonly scale: (at: Spot) => number;
  /** Nearer things have a larger value: the order of painting. */
  readonly nearness: (at: Spot) => number;
};

export function lensOf(swing: Swing, camera: Camera): Lens {
  const scene = sceneOf(swing);
  const faceOn = camera.view === 'face-on';
  return {
    faceOn,
    pixel: (at) => project(camera, scene, at),
    scale: (at) => pixelsPerMm(camera, scene, at),
    nearness: (at) => (faceOn ? at.z : -at.x),
  };
}

/** Across a line of the body in the plane of the picture, towards its right. */
export function acrossOf(lens: Lens, line: Spot): Spot {
  const right = lens.faceOn ? spot(1, 0, 0) : spot(0, 0, 1);
  const dot = right.x * line.x + right.y * line.y + right.z * line.z;
  const across = plus(right, line, -dot / lengthOf(line) ** 2);
  return lengthOf(across) < 1e-6 ? right : unitOf(across);
}

/** The body as a rolling shutter shows it: every joint at the time when its row is read. */
export function seenPose(swing: Swing, camera: Camera, frameS: number): Pose {
  const pose = swing.poseAt(frameS);
  if (camera.readoutS === 0) return pose;
  const scene = sceneOf(swing);
  const seen = (of: (pose: Pose) => Spot): Spot => {
    const place = (timeS: number) => of(swing.poseAt(timeS));
    return place(seenAtS(camera, scene, place, frameS));
  };
  const limb = <T extends 'leadLeg' | 'trailLeg' | 'leadArm' | 'trailArm'>(name: T): Pose[T] => {
    const joints = Object.keys(pose[name]).map((joint) => [
      joint,
      seen((at) => (at[name] as unknown as Record<string, Spot>)[joint] ?? pose.ball),
    ]);
    return Object.fromEntries(joints) as Pose[T];
  };
  const trunk = {
    ...pose.trunk,
    hipMiddle: seen((at) => at.trunk.hipMiddle),
    neckBase: seen((at) => at.trunk.neckBase),
    headCentre: seen((at) => at.trunk.headCentre),
    shoulderMiddle: seen((at) => at.trunk.shoulderMiddle),
    buckle: seen((at) => at.trunk.buckle),
  };
  return {
    ...pose,
    trunk,
    leadLeg: limb('leadLeg'),
    trailLeg: limb('trailLeg'),
    leadArm: limb('leadArm'),
    trailArm: limb('trailArm'),
  };
}

/** The pixel of a share of the club, 0 at its butt, 1 at its head, at the time when that row is read. */
export function clubPixel(swing: Swing, camera: Camera, share: number, frameS: number): Pixel {
  const scene = sceneOf(swing);
  const place = (timeS: number): Spot => {
    const { gripEnd, head } = swing.clubAt(timeS);
    return between(gripEnd, head, share);
  };
  return project(camera, scene, place(seenAtS(camera, scene, place, frameS)));
}
