import { radians, type Spot } from './space.ts';

export const views = ['face-on', 'down-the-line'] as const;
/** Where the camera stands: before the player, or behind, looking along the target line. */
export type View = (typeof views)[number];

/**
 * A pinhole camera with a real lens and a rolling shutter. `distanceMm` is level, from the lens to the ball; `asideMm` is
 * where it aims, in mm right of the ball in the picture; it goes round that point by `yawDeg`. Its axis is level.
 */
export type Camera = {
  readonly view: View;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly distanceMm: number;
  readonly heightMm: number;
  readonly asideMm: number;
  readonly yawDeg: number;
  readonly rollDeg: number;
  readonly focalPx: number;
  /** Radial distortion: slopes grow by 1 + k1 r2. */
  readonly k1: number;
  /** From the first to the last row of one frame, s; the middle row is read at the frame's own time. */
  readonly readoutS: number;
  readonly exposureS: number;
};

export type Pixel = readonly [x: number, y: number];
/** What is filmed: a left-hander is mirrored in the picture and nowhere else. */
export type Scene = { readonly hand: 'right' | 'left'; readonly ball: Spot };

/** Focal length in pixels of a field of view over the long side. */
export const focalPxOf = (fieldDeg: number, longSidePx: number): number =>
  longSidePx / 2 / Math.tan(radians(fieldDeg) / 2);

/** A phone on a stand, held upright, 720 by 1280. */
export const phoneCamera: Camera = {
  view: 'face-on',
  widthPx: 720,
  heightPx: 1280,
  distanceMm: 3050,
  heightMm: 1000,
  asideMm: -60,
  yawDeg: 0,
  rollDeg: 0,
  focalPx: focalPxOf(60, 1280),
  k1: 0,
  readoutS: 0,
  exposureS: 1 / 1000,
};

/** A place in the axes of the camera: right, up and forward of the lens, mm. */
function beforeLens(camera: Camera, scene: Scene, at: Spot) {
  const faceOn = camera.view === 'face-on';
  const aside = (faceOn ? at.x - scene.ball.x : at.z - scene.ball.z) - camera.asideMm;
  const away = faceOn ? scene.ball.z - at.z : at.x - scene.ball.x;
  const yaw = radians(camera.yawDeg);
  return {
    right: aside * Math.cos(yaw) - away * Math.sin(yaw),
    up: at.y - camera.heightMm,
    forward: camera.distanceMm + away * Math.cos(yaw) + aside * Math.sin(yaw),
  };
}

/** Pixels per mm at a place, for widths of limbs. */
export const pixelsPerMm = (camera: Camera, scene: Scene, at: Spot): number =>
  camera.focalPx / beforeLens(camera, scene, at).forward;

/**
 * Where a still place in mm appears in the picture (x right, y down, pixels).
 *
 * @throws RangeError when the place lies behind the lens
 * @source pinhole with one radial term (Brown 1966)
 */
export function project(camera: Camera, scene: Scene, at: Spot): Pixel {
  const { right, up, forward } = beforeLens(camera, scene, at);
  if (forward <= 0) throw new RangeError('The place lies behind the lens');
  const roll = radians(camera.rollDeg);
  const flat = [right / forward, -up / forward] as const;
  // The term is a fit within the picture; far outside of it, it is held.
  const bent = 1 + camera.k1 * Math.min(2, flat[0] ** 2 + flat[1] ** 2);
  const x = bent * (flat[0] * Math.cos(roll) - flat[1] * Math.sin(roll));
  const y = bent * (flat[0] * Math.sin(roll) + flat[1] * Math.cos(roll));
  const side = scene.hand === 'left' ? -1 : 1;
  return [camera.widthPx / 2 + side * camera.focalPx * x, camera.heightPx / 2 + camera.focalPx * y];
}

/**
 * When the rolling shutter reads the row in which a moving place appears.
 *
 * @param frameS time of the frame; the middle row is read then
 * @returns seconds, found by repeated substitution (rows move far slower than the shutter)
 */
export function seenAtS(
  camera: Camera,
  scene: Scene,
  place: (timeS: number) => Spot,
  frameS: number,
): number {
  let timeS = frameS;
  if (camera.readoutS === 0) return timeS;
  for (let round = 0; round < 6; round += 1) {
    const row = project(camera, scene, place(timeS))[1] / camera.heightPx;
    const next = frameS + camera.readoutS * (Math.max(-0.2, Math.min(1.2, row)) - 0.5);
    const settled = Math.abs(next - timeS) < 2e-7;
    timeS = next;
    if (settled) break;
  }
  return timeS;
}
