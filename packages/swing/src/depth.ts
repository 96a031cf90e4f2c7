import type { Point } from './marks.ts';

/** Depth of a point behind the grip end at address, in mm with its standard uncertainty. Common practice, no source. */
const behindGripEnd: Readonly<Partial<Record<Point, readonly [mm: number, u: number]>>> = {
  'grip-end': [0, 40],
  'lead-wrist': [10, 40],
  'lead-thigh-inside': [160, 50],
  'lead-ankle': [210, 50],
  'trail-ankle': [210, 50],
  'lead-heel': [290, 50],
  'trail-heel': [290, 50],
  'hip-middle': [290, 60],
  'neck-base': [20, 70],
  'head-centre': [-30, 70],
  'lead-shoulder': [-10, 80],
};

export type Depth = {
  /** Whether the depth counts from the grip end (true) or from the ball (false). */
  readonly fromGripEnd: boolean;
  readonly mm: number;
  readonly u: number;
};

/** How far a point lies behind the ball, away from the camera; on the ground line of the ball and clubhead it is 0. */
export function depthOf(point: Point): Depth {
  const found = behindGripEnd[point];
  return found === undefined
    ? { fromGripEnd: false, mm: 0, u: point === 'ball' ? 0 : 20 }
    : { fromGripEnd: true, mm: found[0], u: found[1] };
}
