import type { SKRSContext2D } from '@napi-rs/canvas';
import type { Club } from './club-motion.ts';
import type { Lens } from './paint-body.ts';
import { fillPolygon, strokeLine } from './paint-shapes.ts';
import { plus, type Spot, spot } from './space.ts';

const gripLengthMm = 262;

/** From heel to toe when the face is square to the arc: along the ground and towards the camera at address. */
const heelToToe = (shaft: Spot): Spot => plus(plus(spot(0, 0, 0), shaft, 0.47), spot(0, 0.415, 0.78));

/** Grip, shaft and the head of an iron: the sole lies on the ground at address. */
export function paintClub(pen: SKRSContext2D, lens: Lens, club: Club): void {
  const butt = lens.pixel(club.gripEnd);
  const gripFoot = lens.pixel(plus(club.gripEnd, club.direction, gripLengthMm));
  const hosel = lens.pixel(club.head);
  strokeLine(pen, gripFoot, hosel, 3.6, '#5d6468');
  strokeLine(pen, gripFoot, hosel, 1.8, '#d4d9dc');
  strokeLine(pen, butt, gripFoot, 7.5, '#24272a');
  const scale = lens.scale(club.head);
  const toe = lens.pixel(plus(club.head, heelToToe(club.direction), 74));
  const across = [toe[1] - hosel[1], hosel[0] - toe[0]] as const;
  const length = Math.max(1, Math.hypot(...across));
  const half = (46 * scale) / 2;
  const [nx, ny] = [(across[0] / length) * half, (across[1] / length) * half];
  fillPolygon(
    pen,
    [
      [hosel[0] - nx * 0.7, hosel[1] - ny * 0.7],
      [toe[0] - nx * 1.25, toe[1] - ny * 1.25],
      [toe[0] + nx * 1.25, toe[1] + ny * 1.25],
      [hosel[0] + nx * 0.7, hosel[1] + ny * 0.7],
    ],
    '#7c858b',
  );
  fillPolygon(
    pen,
    [
      [hosel[0] - nx * 0.4, hosel[1] - ny * 0.4],
      [toe[0] - nx, toe[1] - ny],
      [toe[0] + nx * 0.5, toe[1] + ny * 0.5],
      [hosel[0] + nx * 0.3, hosel[1] + ny * 0.3],
    ],
    '#aeb7bc',
  );
}
