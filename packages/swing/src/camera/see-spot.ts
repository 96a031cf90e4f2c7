import type { FramePoint } from './frame.ts';

/** A camera as the pinhole model has it: the lens above the line on which depth counts, turned by yaw and roll. */
export type Pinhole = {
  readonly distanceMm: number;
  readonly lensHeightMm: number;
  readonly yawDeg: number;
  readonly rollDeg: number;
  readonly focalPx: number;
};

/** A place in mm: level and up by the arrows of `frame.ts`, depth beyond the ball. */
export type Spot3 = readonly [level: number, up: number, depth: number];

/**
 * A place seen without error, in pixels from the middle of the picture.
 *
 * @param level0 - level of the line the lens stands on, mm
 * @source pinhole geometry; the camera stands on a circle round the ball, turning it carries deeper points backwards
 */
export function seeSpot([level, up, depth]: Spot3, camera: Pinhole, level0 = 0): FramePoint {
  const yaw = (camera.yawDeg * Math.PI) / 180;
  const roll = (camera.rollDeg * Math.PI) / 180;
  const aside = level - level0;
  const right = aside * Math.cos(yaw) - depth * Math.sin(yaw);
  const away = camera.distanceMm + depth * Math.cos(yaw) + aside * Math.sin(yaw);
  const levelPx = (camera.focalPx * right) / away;
  const upPx = (camera.focalPx * (up - camera.lensHeightMm)) / away;
  return {
    levelPx: levelPx * Math.cos(roll) - upPx * Math.sin(roll),
    upPx: upPx * Math.cos(roll) + levelPx * Math.sin(roll),
  };
}
