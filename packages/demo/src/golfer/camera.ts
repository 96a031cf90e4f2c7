import { radians, type Spot } from './space.ts';

/** A pinhole camera face-on: `distanceMm` from the ankles, `heightMm` above the ground, level, turned by `yawDeg`. */
export type Camera = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly distanceMm: number;
  readonly heightMm: number;
  readonly asideMm: number;
  readonly yawDeg: number;
  readonly focalPx: number;
};

export type Pixel = readonly [x: number, y: number];

/** A phone on a stand, held upright: 720 by 1280, field of 49 degrees from top to bottom. */
export const phoneCamera: Camera = {
  widthPx: 720,
  heightPx: 1280,
  distanceMm: 4000,
  heightMm: 1000,
  asideMm: -30,
  yawDeg: 0,
  focalPx: 1400,
};

/** Pixels per mm at a place, for widths of limbs. */
export const pixelsPerMm = (camera: Camera, at: Spot): number => camera.focalPx / (camera.distanceMm - at.z);

/**
 * Where a place in mm appears in the picture (x right, y down, pixels). A left-hander is mirrored here and nowhere else.
 *
 * @throws RangeError when the place lies behind the lens
 */
export function project(camera: Camera, hand: 'right' | 'left', at: Spot): Pixel {
  const yaw = radians(camera.yawDeg);
  const aside = (hand === 'left' ? -at.x : at.x) - (hand === 'left' ? -camera.asideMm : camera.asideMm);
  const depth = camera.distanceMm - at.z;
  const right = aside * Math.cos(yaw) + depth * Math.sin(yaw);
  const forward = depth * Math.cos(yaw) - aside * Math.sin(yaw);
  if (forward <= 0) throw new RangeError('The place lies behind the lens');
  return [
    camera.widthPx / 2 + (camera.focalPx * right) / forward,
    camera.heightPx / 2 + (camera.focalPx * (camera.heightMm - at.y)) / forward,
  ];
}
