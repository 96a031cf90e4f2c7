import { drawNormal } from '@ballfirst/numbers/draw-normal';
import { type Camera, focalPxOf, type View } from './camera.ts';

/** Size of the picture; 1080 by 1920 is what phones film upright. */
export type PictureSize = { readonly widthPx: number; readonly heightPx: number };

/** What is not left to chance: `yawDeg: 0` takes away what a careful stand takes away. */
export type CameraChanges = Partial<Omit<Camera, 'view' | 'widthPx' | 'heightPx'>>;

/**
 * A camera by chance as golfers put one up: field 60-72 degrees, 3-5 m away, lens at 1 +/- .2 m, yaw 0 +/- 4 degrees cut
 * at 12, roll 0 +/- 1.5, k1 0 +/- .02, rolling shutter 8-20 ms, exposure 1/4000-1/250 s.
 *
 * @param random uniform numbers, 0 <= x < 1
 * @source the design of the truth test; common practice, no source
 */
export function drawCamera(
  random: () => number,
  view: View,
  size: PictureSize = { widthPx: 1080, heightPx: 1920 },
  changes: CameraChanges = {},
): Camera {
  const between = (low: number, high: number) => low + (high - low) * random();
  const around = (mean: number, sd: number, cut: number) =>
    mean + Math.max(-cut, Math.min(cut, sd * drawNormal(random)));
  return {
    view,
    ...size,
    focalPx: focalPxOf(between(60, 72), Math.max(size.widthPx, size.heightPx)),
    distanceMm: between(3000, 5000),
    heightMm: around(1000, 200, 400),
    // Face-on it aims at the middle of the stance, from behind between the ball and the toes.
    asideMm: around(view === 'face-on' ? -60 : -230, 60, 150),
    yawDeg: around(0, 4, 12),
    rollDeg: around(0, 1.5, 4),
    k1: around(0, 0.02, 0.05),
    readoutS: between(0.008, 0.02),
    exposureS: 1 / (250 * 16 ** random()),
    ...changes,
  };
}
