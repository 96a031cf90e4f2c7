import type { SKRSContext2D } from '@napi-rs/canvas';
import { type Camera, type Pixel, seenAtS } from './camera.ts';
import { clubPixel, type Lens } from './paint-lens.ts';
import { fillPolygon, strokePath } from './paint-shapes.ts';
import { lengthOf, minus, plus, type Spot, spot } from './space.ts';
import type { Swing } from './swing.ts';
import { sceneOf } from './truth.ts';

const gripLengthMm = 262;
const pieces = 9;
/** The open shutter sees several faint clubs where the club moves, one where it is still. */
const smearSteps = 10;

export function paintClub(
  pen: SKRSContext2D,
  lens: Lens,
  swing: Swing,
  camera: Camera,
  frameS: number,
): void {
  const half = camera.exposureS / 2;
  const early = swing.clubAt(frameS - half).head;
  const late = swing.clubAt(frameS + half).head;
  if (lengthOf(minus(late, early)) < 6) {
    paintOneClub(pen, lens, swing, camera, frameS);
    return;
  }
  pen.globalAlpha = 0.26;
  for (let step = 0; step < smearSteps; step += 1) {
    const shift = camera.exposureS * ((step + 0.5) / smearSteps - 0.5);
    paintOneClub(pen, lens, swing, camera, frameS + shift);
  }
  pen.globalAlpha = 1;
}

/** From heel to toe when the face is square to the arc: along the ground and away from the player at address. */
const heelToToe = (shaft: Spot): Spot => plus(plus(spot(0, 0, 0), shaft, 0.47), spot(0, 0.415, 0.78));

/** Grip, shaft and the head of an iron: the sole lies on the ground at address. */
function paintOneClub(pen: SKRSContext2D, lens: Lens, swing: Swing, camera: Camera, frameS: number): void {
  const grip = gripLengthMm / swing.shape.clubLengthMm;
  const way = (from: number, to: number): Pixel[] =>
    Array.from({ length: pieces }, (_, i) =>
      clubPixel(swing, camera, from + ((to - from) * i) / (pieces - 1), frameS),
    );
  const shaft = way(grip, 1);
  strokePath(pen, shaft, 4, '#565d61');
  strokePath(pen, shaft, 2, '#dfe3e5');
  strokePath(pen, way(0, grip), 7, '#202325');
  const head = (timeS: number) => swing.clubAt(timeS).head;
  const club = swing.clubAt(seenAtS(camera, sceneOf(swing), head, frameS));
  const scale = lens.scale(club.head);
  const middle = lens.pixel(club.head);
  const heel = lens.pixel(plus(club.head, heelToToe(club.direction), -38));
  const toe = lens.pixel(plus(club.head, heelToToe(club.direction), 44));
  const up = lens.pixel(plus(club.head, club.direction, -30));
  const rise = [up[0] - middle[0], up[1] - middle[1]] as const;
  const corner = ([x, y]: Pixel, share: number): Pixel => [x + rise[0] * share, y + rise[1] * share];
  const thin = Math.max(1.5, 9 * scale);
  fillPolygon(
    pen,
    [
      corner(heel, 0.35),
      corner(toe, 0.85),
      [toe[0] + thin * 0.3, toe[1]],
      corner(toe, -0.75),
      corner(heel, -0.75),
    ],
    '#6c757b',
  );
  fillPolygon(pen, [corner(heel, 0.2), corner(toe, 0.6), corner(toe, -0.5), corner(heel, -0.5)], '#b3bcc1');
}
