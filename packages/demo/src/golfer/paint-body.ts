import type { SKRSContext2D } from '@napi-rs/canvas';
import type { Pixel } from './camera.ts';
import type { Arm, Leg } from './limbs.ts';
import type { Look } from './look.ts';
import { type Disc, fillLimb, fillOutline, fillOval, fillShadedLimb, strokeLine } from './paint-shapes.ts';
import { between, plus, radians, type Spot, spot } from './space.ts';
import type { Pose } from './swing.ts';

/** How a place in mm becomes a pixel and a length in mm at that place a length in pixels. */
export type Lens = { readonly pixel: (at: Spot) => Pixel; readonly scale: (at: Spot) => number };

const disc = (lens: Lens, at: Spot, radiusMm: number): Disc => ({
  at: lens.pixel(at),
  radius: radiusMm * lens.scale(at),
});

export function paintLeg(pen: SKRSContext2D, lens: Lens, leg: Leg, look: Look): void {
  const lift = leg.heel.y - 22;
  const sole = disc(lens, plus(leg.toe, spot(0, -2, 0)), 46);
  fillLimb(pen, disc(lens, plus(leg.heel, spot(0, 18, 0)), 44), sole, '#3b3a38');
  fillLimb(
    pen,
    disc(lens, plus(leg.heel, spot(0, 30, 0)), 40),
    disc(lens, plus(leg.toe, spot(0, 14, 0)), 43),
    '#eceae4',
  );
  if (lift < 40)
    fillLimb(pen, disc(lens, leg.ankle, 38), disc(lens, plus(leg.toe, spot(0, 26, -60)), 36), '#dedbd2');
  fillShadedLimb(
    pen,
    [disc(lens, leg.hip, 94), disc(lens, leg.knee, 66), disc(lens, plus(leg.ankle, spot(0, 12, 0)), 50)],
    look.trousers,
    look.trousersShade,
  );
}

export function paintArm(pen: SKRSContext2D, lens: Lens, arm: Arm, look: Look): void {
  const cuff = between(arm.shoulder, arm.elbow, 0.75);
  const bare = [disc(lens, cuff, 43), disc(lens, arm.elbow, 40), disc(lens, arm.wrist, 28)];
  fillShadedLimb(pen, bare, look.skin, look.skinShade);
  fillShadedLimb(pen, [disc(lens, arm.shoulder, 62), disc(lens, cuff, 53)], look.shirt, look.shirtShade);
  const [x, y] = lens.pixel(arm.shoulder);
  const round = 57 * lens.scale(arm.shoulder);
  fillOval(pen, [x, y], round, round, look.shirt);
}

/** The hands close over the grip, so they are painted after the club; the lead hand wears a glove. */
export function paintHand(pen: SKRSContext2D, lens: Lens, arm: Arm, lit: string, shade: string): void {
  fillShadedLimb(pen, [disc(lens, arm.wrist, 31), disc(lens, arm.hand, 41)], lit, shade);
}

/** Width seen of an oval trunk turned by an angle: half its width square on, half its depth from the side. */
const seenHalf = (widthMm: number, depthMm: number, turnDeg: number): number =>
  Math.hypot(widthMm * Math.cos(radians(turnDeg)), depthMm * Math.sin(radians(turnDeg)));

export function paintTrunk(pen: SKRSContext2D, lens: Lens, pose: Pose, look: Look): void {
  const { hipMiddle, neckBase, shoulderMiddle, hipTurnDeg, shoulderTurnDeg, shoulderAcross } = pose.trunk;
  const hips = seenHalf(172, 128, hipTurnDeg);
  const waist = seenHalf(150, 118, (hipTurnDeg + shoulderTurnDeg) / 2);
  const chest = seenHalf(205, 132, shoulderTurnDeg);
  const seat = plus(hipMiddle, spot(0, -120, 0));
  const side = (at: Spot, half: number, tilt = 0): Pixel => lens.pixel(plus(at, spot(half, tilt, 0)));
  fillOutline(
    pen,
    [
      side(hipMiddle, -hips),
      side(hipMiddle, hips),
      side(seat, hips),
      side(plus(seat, spot(0, -70, 0)), 0),
      side(seat, -hips),
    ],
    look.trousers,
  );
  const low = plus(hipMiddle, spot(0, 2, 0));
  const shoulderRise = 22 + 32 * Math.abs(Math.cos(radians(shoulderTurnDeg)));
  const middle = between(hipMiddle, shoulderMiddle, 0.42);
  const ribs = between(hipMiddle, shoulderMiddle, 0.78);
  const tilt = Math.sign(shoulderAcross.x || 1) * shoulderAcross.y * chest;
  const outline = (share: number): Pixel[] => [
    side(low, -hips * share),
    side(middle, -waist * share),
    side(ribs, -chest * 0.94 * share, -tilt * 0.6),
    side(shoulderMiddle, -chest * share, shoulderRise - tilt),
    side(neckBase, -82 * share, 14),
    side(neckBase, 82 * share, 14),
    side(shoulderMiddle, chest * share, shoulderRise + tilt),
    side(ribs, chest * 0.94 * share, tilt * 0.6),
    side(middle, waist * share),
    side(low, hips * share),
  ];
  fillOutline(pen, outline(1.06), look.shirtShade);
  fillOutline(
    pen,
    outline(0.94).map(([x, y]): Pixel => [x + 4, y]),
    look.shirt,
  );
  strokeLine(
    pen,
    side(hipMiddle, -hips * 0.93),
    side(hipMiddle, hips * 0.93),
    26 * lens.scale(hipMiddle),
    '#2b2724',
  );
}

/** Head in a cap; `lookDeg` turns the peak from the ball (0) to the target (90). */
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
  fillShadedLimb(
    pen,
    [disc(lens, neckBase, 56), disc(lens, plus(headCentre, spot(0, -60, -30)), 52)],
    look.skin,
    look.skinShade,
  );
  const [cx, cy] = lens.pixel(neckBase);
  fillOval(pen, [cx, cy + 4 * scale], 72 * scale, 20 * scale, look.shirtShade);
  fillOval(pen, [x, y], 82 * scale, 107 * scale, look.skinShade);
  fillOval(pen, [x + 5 * scale, y + 4 * scale], 73 * scale, 97 * scale, look.skin);
  const turn = mirror * Math.sin(radians(lookDeg));
  for (const ear of [-1, 1]) {
    if (ear * turn < 0.5)
      fillOval(
        pen,
        [x + ear * (80 - 20 * Math.abs(turn)) * scale, y + 12 * scale],
        13 * scale,
        24 * scale,
        look.skinShade,
      );
  }
  pen.save();
  pen.beginPath();
  pen.rect(x - 120 * scale, y - 130 * scale, 240 * scale, 122 * scale);
  pen.clip();
  fillOval(pen, [x, y - 14 * scale], 87 * scale, 104 * scale, look.cap);
  pen.restore();
  fillOval(
    pen,
    [x + turn * 66 * scale, y - 10 * scale],
    (88 - 26 * Math.abs(turn)) * scale,
    22 * scale,
    look.cap,
  );
  fillOval(
    pen,
    [x + turn * 66 * scale, y - 3 * scale],
    (78 - 24 * Math.abs(turn)) * scale,
    12 * scale,
    'rgba(20,20,20,0.35)',
  );
}
