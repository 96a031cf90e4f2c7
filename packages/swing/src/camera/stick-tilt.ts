import { propagate } from '@ballfirst/numbers/propagate';
import type { Place } from '../marks/place.ts';
import type { PlacedMarks } from '../marks/placed-marks.ts';

/** How far the target line leans in the picture, + up towards the target, with its doubt. */
export type StickTilt = { readonly deg: number; readonly uDeg: number; readonly lengthPx: number };

/** Length of a stick that golfers lay on the ground, mm. Common practice, no source: 45 to 48 inches. */
export const usualStick = { lengthMm: 1190, uLengthMm: 25 } as const;

export const stickEnds = {
  near: { position: 'address', point: 'target-stick' },
  ahead: { position: 'address', point: 'target-stick-ahead' },
} as const satisfies Record<string, Place>;

/** A stick shorter than this in the picture's pixels says too little about a tilt. Common practice, no source. */
const leastPx = 100;

/**
 * Tilt of the target line in a face-on picture, from a stick that lies on it. Heels may not stand in: a stance 5 degrees
 * open looks tilted by 1.25.
 *
 * @returns null when the stick is not marked at both ends, or is too short in the picture
 * @source two clicks of e pixels on a stick of L: u = sqrt(2) e / L, by the law of propagation
 */
export function stickTilt(marks: PlacedMarks): StickTilt | null {
  const near = marks.at(stickEnds.near);
  const ahead = marks.at(stickEnds.ahead);
  if (near === undefined || ahead === undefined) return null;
  const level = ahead.levelPx - near.levelPx;
  if (!(level >= leastPx)) return null;
  const { value, u } = propagate(
    ([a = 0, b = 0]) => (Math.atan2(b - a, level) * 180) / Math.PI,
    [near.upPx, ahead.upPx],
    [
      [near.uPx ** 2, 0],
      [0, ahead.uPx ** 2],
    ],
  );
  return { deg: value, uDeg: u, lengthPx: Math.hypot(level, ahead.upPx - near.upPx) };
}
