import { seeSpot } from '../camera/see-spot.ts';
import { usualStick } from '../camera/stick-tilt.ts';
import type { Mark, Picture } from '../marks/marks.ts';
import type { ClubheadPixel } from './clubhead-track.ts';

/** What a planted trail lies on: one second at 240 frames a second. */
export const trailPicture: Picture = {
  widthPx: 1080,
  heightPx: 1920,
  frameTimesS: Array.from({ length: 240 }, (_, frame) => frame / 240),
};
const camera = { distanceMm: 3900, lensHeightMm: 1000, yawDeg: 0, rollDeg: 0, focalPx: 1400 };
const plane = (61.5 * Math.PI) / 180;
const radiusMm = 1300;

const pixel = (spot: readonly [number, number, number]) => {
  const { levelPx, upPx } = seeSpot(spot, camera);
  return { x: 540 + levelPx, y: 960 - upPx };
};

/**
 * A clubhead on a circle in a tilted plane whose lowest point lies so far ahead of the ball, seen face-on of a right-hander;
 * with the ball and the stick on its line. The ball is met on frame 120.3.
 */
export function plantedTrail(lowPointMm: number): {
  readonly trail: readonly ClubheadPixel[];
  readonly marks: readonly Mark[];
} {
  const heel = Math.sqrt(radiusMm ** 2 - lowPointMm ** 2);
  const trail = Array.from({ length: 9 }, (_, index) => {
    const frame = 116 + index;
    const since = (frame - 120.3) / 240;
    const psi = -Math.asin(lowPointMm / radiusMm) + (39_000 / radiusMm) * since * (since < 0 ? 1 : 0.82);
    const rise = heel - radiusMm * Math.cos(psi);
    const x = lowPointMm + radiusMm * Math.sin(psi);
    const at = pixel([x, 21.3 + rise * Math.sin(plane), rise * Math.cos(plane)]);
    return { alongMm: x, point: { frame, ...at } };
  }).filter(({ alongMm }) => Math.abs(alongMm) < 600);
  const mark = (point: Mark['point'], spot: readonly [number, number, number]): Mark => ({
    ...{ position: 'address', point, frame: 0, source: 'coach' },
    ...pixel(spot),
  });
  const half = usualStick.lengthMm / 2;
  return {
    trail: trail.map(({ point }) => point),
    marks: [
      mark('ball', [0, 21.3, 0]),
      mark('target-stick', [-half, 0, 0]),
      mark('target-stick-ahead', [half, 0, 0]),
    ],
  };
}
