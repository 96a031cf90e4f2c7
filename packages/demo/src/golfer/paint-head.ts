import type { SKRSContext2D } from '@napi-rs/canvas';
import type { Look } from './look.ts';
import type { Lens } from './paint-lens.ts';
import { type Disc, fillOval, fillShadedLimb } from './paint-shapes.ts';
import { plus, radians, type Spot, spot } from './space.ts';
import type { Pose } from './swing.ts';

const disc = (lens: Lens, at: Spot, radiusMm: number): Disc => ({
  at: lens.pixel(at),
  radius: radiusMm * lens.scale(at),
});

/**
 * Neck and head in a cap. `lookDeg` turns the face from the ball (0) to the target (90); `mirror` is -1 for a
 * left-hander, whose picture is the other way round.
 */
export function paintHead(
  pen: SKRSContext2D,
  lens: Lens,
  pose: Pose,
  look: Look,
  lookDeg: number,
  mirror: 1 | -1,
): void {
  const { headCentre, neckBase } = pose.trunk;
  const scale = lens.scale(headCentre);
  const [x, y] = lens.pixel(headCentre);
  const nape = lens.faceOn ? spot(0, -60, -30) : spot(0, -70, -35);
  fillShadedLimb(
    pen,
    [disc(lens, neckBase, 56), disc(lens, plus(headCentre, nape), 52)],
    look.skin,
    look.skinShade,
  );
  const [cx, cy] = lens.pixel(neckBase);
  fillOval(pen, [cx, cy + 4 * scale], 72 * scale, 20 * scale, look.shirtShade);
  // Which way the face looks in the picture: 0 at the lens or away from it, 1 to the right, -1 to the left.
  const turn = mirror * (lens.faceOn ? Math.sin(radians(lookDeg)) : Math.cos(radians(lookDeg)));
  const bow = lens.faceOn ? 0 : 0.42 * turn;
  pen.save();
  pen.translate(x, y);
  pen.rotate(bow);
  paintFace(pen, scale, turn, lens.faceOn, look);
  pen.restore();
}

function paintFace(pen: SKRSContext2D, scale: number, turn: number, faceOn: boolean, look: Look): void {
  const side = Math.abs(turn);
  const wide = 82 + 14 * (faceOn ? 0 : side);
  fillOval(pen, [0, 0], wide * scale, 107 * scale, look.skinShade);
  fillOval(pen, [5 * scale, 4 * scale], (wide - 9) * scale, 97 * scale, look.skin);
  for (const ear of [-1, 1]) {
    if (faceOn && ear * turn < 0.5)
      fillOval(pen, [ear * (80 - 20 * side) * scale, 12 * scale], 13 * scale, 24 * scale, look.skinShade);
  }
  if (!faceOn) fillOval(pen, [-22 * turn * scale, 14 * scale], 15 * scale, 26 * scale, look.skinShade);
  pen.save();
  pen.beginPath();
  pen.rect(-130 * scale, -130 * scale, 260 * scale, 122 * scale);
  pen.clip();
  fillOval(pen, [0, -14 * scale], (wide + 5) * scale, 104 * scale, look.cap);
  pen.restore();
  // From behind a peak that points at the target is hidden by the head.
  const shown = faceOn ? 1 : side;
  const reach = faceOn ? 66 : 92;
  if (shown > 0.15) {
    const breadth = (faceOn ? 88 - 26 * side : 62) * shown;
    fillOval(pen, [turn * reach * scale, -10 * scale], breadth * scale, (faceOn ? 22 : 14) * scale, look.cap);
    fillOval(
      pen,
      [turn * reach * scale, -3 * scale],
      breadth * 0.88 * scale,
      9 * scale,
      'rgba(20,20,20,0.35)',
    );
  }
}
