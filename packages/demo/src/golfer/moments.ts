import { minus } from './space.ts';
import type { Pose, Swing } from './swing.ts';
import { timing } from './timing.ts';

export const moments = [
  'address',
  'shaft-parallel-back',
  'lead-arm-parallel-back',
  'top',
  'lead-arm-parallel-down',
  'shaft-parallel-down',
  'impact',
  'shaft-parallel-through',
  'finish',
] as const;
export type Moment = (typeof moments)[number];

/** The frame nearest to each moment of the swing, found on the moving golfer, not read from the knobs. */
export function frameOfMoments(swing: Swing, fps: number): Record<Moment, number> {
  const shaft = (pose: Pose) => Math.abs(pose.club.direction.y);
  const leadArm = (pose: Pose) => Math.abs(minus(pose.leadArm.wrist, pose.leadArm.shoulder).y);
  const least = (of: (pose: Pose) => number, fromS: number, toS: number) =>
    leastFrame(swing, fps, of, fromS, toS);
  const middleBack = (timing.start + timing.top) / 2;
  return {
    address: Math.round((timing.start - 0.1) * fps),
    'shaft-parallel-back': least(shaft, timing.start, middleBack + 0.05),
    'lead-arm-parallel-back': least(leadArm, timing.start, timing.top - 0.1),
    top: Math.round(timing.top * fps),
    'lead-arm-parallel-down': least(leadArm, timing.top + 0.05, timing.impact - 0.02),
    'shaft-parallel-down': least(shaft, timing.leadArmParallelDown, timing.impact - 0.01),
    impact: Math.round(timing.impact * fps),
    'shaft-parallel-through': least(shaft, timing.impact + 0.01, timing.impact + 0.15),
    finish: Math.round(timing.finish * fps),
  };
}

function leastFrame(
  swing: Swing,
  fps: number,
  of: (pose: Pose) => number,
  fromS: number,
  toS: number,
): number {
  let best = Math.ceil(fromS * fps);
  for (let frame = best; frame <= toS * fps; frame += 1) {
    if (of(swing.poseAt(frame / fps)) < of(swing.poseAt(best / fps))) best = frame;
  }
  return best;
}
