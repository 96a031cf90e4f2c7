import type { SKRSContext2D } from '@napi-rs/canvas';
import type { Pixel } from './camera.ts';
import type { Arm, Leg } from './limbs.ts';
import type { Look } from './look.ts';
import { acrossOf, type Lens } from './paint-lens.ts';
import {
  type Disc,
  fillLimb,
  fillOutline,
  fillOval,
  fillPolygon,
  fillShadedLimb,
  strokeLine,
} from './paint-shapes.ts';
import { between, minus, plus, radians, type Spot, spot } from './space.ts';
import type { Pose } from './swing.ts';
import { ovalReach } from './trunk.ts';

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
    [
      disc(lens, leg.hip, lens.faceOn ? 94 : 108),
      disc(lens, leg.knee, 66),
      disc(lens, plus(leg.ankle, spot(0, 12, 0)), 50),
    ],
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

/** Half of the breadth of an oval body as this lens sees it. */
const seenHalf = (lens: Lens, widthMm: number, depthMm: number, turnDeg: number): number =>
  lens.faceOn ? ovalReach(depthMm, widthMm, turnDeg) : ovalReach(widthMm, depthMm, turnDeg);

export function paintTrunk(pen: SKRSContext2D, lens: Lens, pose: Pose, look: Look): void {
  const { hipMiddle, neckBase, shoulderMiddle, hipTurnDeg, shoulderTurnDeg } = pose.trunk;
  const hips = seenHalf(lens, 172, 128, hipTurnDeg);
  const waist = seenHalf(lens, 150, 118, (hipTurnDeg + shoulderTurnDeg) / 2);
  const chest = seenHalf(lens, 205, 132, shoulderTurnDeg);
  const spine = minus(neckBase, hipMiddle);
  const across = acrossOf(lens, spine);
  const level = acrossOf(lens, spot(0, 1, 0));
  const side = (at: Spot, half: number, tilt = 0): Pixel =>
    lens.pixel(plus(plus(at, across, half), spot(0, tilt, 0)));
  const seat = plus(hipMiddle, spot(0, -110, 0));
  const low = (at: Spot, half: number): Pixel => lens.pixel(plus(at, level, half));
  fillOutline(
    pen,
    [
      low(hipMiddle, -hips),
      low(hipMiddle, hips),
      low(seat, hips),
      low(plus(seat, spot(0, -70, 0)), 0),
      low(seat, -hips),
    ],
    look.trousers,
  );
  const shoulderRise = lens.faceOn ? 22 + 32 * Math.abs(Math.cos(radians(shoulderTurnDeg))) : 12;
  const middle = between(hipMiddle, shoulderMiddle, 0.42);
  const ribs = between(hipMiddle, shoulderMiddle, 0.78);
  const tilt = lens.faceOn
    ? Math.sign(pose.trunk.shoulderAcross.x || 1) * pose.trunk.shoulderAcross.y * chest
    : 0;
  const outline = (share: number): Pixel[] => [
    low(hipMiddle, -hips * share),
    side(middle, -waist * share),
    side(ribs, -chest * 0.94 * share, -tilt * 0.6),
    side(shoulderMiddle, -chest * share, shoulderRise - tilt),
    side(neckBase, -82 * share, 14),
    side(neckBase, 82 * share, 14),
    side(shoulderMiddle, chest * share, shoulderRise + tilt),
    side(ribs, chest * 0.94 * share, tilt * 0.6),
    side(middle, waist * share),
    low(hipMiddle, hips * share),
  ];
  fillOutline(pen, outline(1.06), look.shirtShade);
  fillOutline(
    pen,
    outline(0.94).map(([x, y]): Pixel => [x + 3, y]),
    look.shirt,
  );
  strokeLine(
    pen,
    low(hipMiddle, -hips * 0.93),
    low(hipMiddle, hips * 0.93),
    26 * lens.scale(hipMiddle),
    '#2b2724',
  );
  paintBuckle(pen, lens, pose);
}

/** The buckle shows when the hips face the lens; it runs ahead of the hips when they turn. */
function paintBuckle(pen: SKRSContext2D, lens: Lens, pose: Pose): void {
  const { buckle, hipMiddle } = pose.trunk;
  if (lens.nearness(buckle) <= lens.nearness(hipMiddle) + 40) return;
  const [x, y] = lens.pixel(buckle);
  const half = 16 * lens.scale(buckle);
  fillPolygon(
    pen,
    [
      [x - half, y - half * 0.8],
      [x + half, y - half * 0.8],
      [x + half, y + half * 0.8],
      [x - half, y + half * 0.8],
    ],
    '#c9b27a',
  );
}
