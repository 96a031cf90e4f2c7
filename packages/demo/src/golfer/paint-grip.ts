import { createCanvas, type SKRSContext2D } from '@napi-rs/canvas';
import { gripSize } from './grip-size.ts';
import type { Look } from './look.ts';
import type { Hand } from './swing.ts';

/** What one drawn photo of a grip shows. */
export type GripPlan = {
  readonly id: string;
  readonly hand: Hand;
  /** How far both hands are turned on the handle, in degrees: + away from the target (the back of the lead hand shows). */
  readonly turnDeg: number;
  readonly look: Look;
};

/** The handle runs from the player's belt down towards the camera. */
const handle = { topX: 470, topY: 235, endX: 432, endY: 1010, topWidth: 78, endWidth: 58 } as const;
const at = (share: number) => ({
  x: handle.topX + (handle.endX - handle.topX) * share,
  y: handle.topY + (handle.endY - handle.topY) * share,
  half: (handle.topWidth + (handle.endWidth - handle.topWidth) * share) / 2,
});

/**
 * A drawing in place of a photo: both hands on the handle, seen from the front, the lead hand above.
 * @returns a JPEG of `gripSize`; the same plan gives the same bytes
 * @throws RangeError for a turn beyond 45 degrees, where the drawing would no longer be a grip
 */
export const paintGrip = ({ hand, turnDeg, look }: GripPlan): Buffer => {
  if (!(Math.abs(turnDeg) <= 45)) throw new RangeError(`A grip is not turned by ${turnDeg} degrees.`);
  const { widthPx, heightPx } = gripSize;
  const canvas = createCanvas(widthPx, heightPx);
  const on = canvas.getContext('2d');
  if (hand === 'left') {
    on.translate(widthPx, 0);
    on.scale(-1, 1);
  }
  paintBehind(on, look);
  paintArm(on, look, { fromX: 800, fromY: 60, toX: 600, toY: 330 });
  paintArm(on, look, { fromX: 90, fromY: 130, toX: 320, toY: 540 });
  paintHandle(on);
  // Drawn from below upwards: the little finger of the lower hand lies over the upper hand.
  paintFingers(on, look, { from: 0.205, side: 1, turnDeg, lengths: [150, 168, 165, 140] });
  paintFingers(on, look, { from: 0.47, side: -1, turnDeg, lengths: [138, 160, 164, 150] });
  paintThumb(on, look, turnDeg);
  return canvas.encodeSync('jpeg', 84);
};

/** Trousers, shoes and mat as a phone sees them close behind the hands: soft and large. */
const paintBehind = (on: SKRSContext2D, look: Look): void => {
  const { widthPx, heightPx } = gripSize;
  const ground = on.createLinearGradient(0, 600, 0, heightPx);
  ground.addColorStop(0, '#86a27a');
  ground.addColorStop(1, '#4f7d5f');
  on.fillStyle = ground;
  on.fillRect(0, 0, widthPx, heightPx);
  on.filter = 'blur(9px)';
  on.fillStyle = look.shirt;
  on.fillRect(120, -40, 660, 260);
  on.fillStyle = look.trousers;
  on.beginPath();
  on.moveTo(150, 210);
  on.lineTo(750, 210);
  on.lineTo(790, heightPx);
  on.lineTo(540, heightPx);
  on.lineTo(450, 640);
  on.lineTo(360, heightPx);
  on.lineTo(110, heightPx);
  on.closePath();
  on.fill();
  on.fillStyle = look.trousersShade;
  on.fillRect(150, 200, 600, 26);
  on.filter = 'none';
};

type Arm = { fromX: number; fromY: number; toX: number; toY: number };
const paintArm = (on: SKRSContext2D, look: Look, { fromX, fromY, toX, toY }: Arm): void => {
  const part = (colour: string, width: number, from: number, to: number) => {
    on.strokeStyle = colour;
    on.lineWidth = width;
    on.beginPath();
    on.moveTo(fromX + (toX - fromX) * from, fromY + (toY - fromY) * from);
    on.lineTo(fromX + (toX - fromX) * to, fromY + (toY - fromY) * to);
    on.stroke();
  };
  on.lineCap = 'round';
  part(look.skinShade, 134, 0, 1);
  part(look.skin, 118, 0, 1);
  on.lineCap = 'butt';
  part(look.shirtShade, 190, -0.4, 0.3);
  part(look.shirt, 172, -0.4, 0.28);
};

const paintHandle = (on: SKRSContext2D): void => {
  const [top, end] = [at(0), at(1)];
  on.strokeStyle = '#b9bec2';
  on.lineWidth = 26;
  on.beginPath();
  on.moveTo(end.x, end.y);
  on.lineTo(end.x - 12, gripSize.heightPx + 20);
  on.stroke();
  on.fillStyle = '#23272b';
  on.beginPath();
  on.moveTo(top.x - top.half, top.y);
  on.lineTo(top.x + top.half, top.y);
  on.lineTo(end.x + end.half, end.y);
  on.lineTo(end.x - end.half, end.y);
  on.closePath();
  on.fill();
  on.beginPath();
  on.ellipse(top.x, top.y, top.half, 22, 0, 0, 2 * Math.PI);
  on.fillStyle = '#383e44';
  on.fill();
  on.strokeStyle = '#3c434a';
  on.lineWidth = 4;
  for (let share = 0.84; share < 0.99; share += 0.03) {
    const { x, y, half } = at(share);
    on.beginPath();
    on.moveTo(x - half + 6, y - 6);
    on.lineTo(x + half - 6, y + 6);
    on.stroke();
  }
};

type Fingers = { from: number; side: 1 | -1; turnDeg: number; lengths: readonly number[] };

/** The back of one hand beside the handle and its four fingers across it; `side` 1 comes from the right of the picture. */
const paintFingers = (on: SKRSContext2D, look: Look, { from, side, turnDeg, lengths }: Fingers): void => {
  const each = 0.066;
  // A hand that is turned away from the target brings its knuckles onto the handle, or off it for the other one.
  const shift = Math.sin((turnDeg * Math.PI) / 180) * 90;
  const middle = at(from + each * 1.5);
  on.fillStyle = look.skinShade;
  blob(on, middle.x + side * 128 - shift * 0.6, middle.y - 12, 112, 148, side * 0.22);
  on.fillStyle = look.skin;
  blob(on, middle.x + side * 126 - shift * 0.6, middle.y - 16, 100, 136, side * 0.22);
  for (const [finger, length] of lengths.entries()) {
    const { x, y } = at(from + each * finger);
    const startX = x + side * 112 - shift;
    const endX = startX - side * length - shift * 0.2;
    const endY = y + (side === 1 ? 20 : -16) + 6;
    capsule(on, look, { startX, startY: y - (side === 1 ? 14 : -14), endX, endY, width: 56 - finger * 2 });
    on.fillStyle = look.skinShade;
    blob(on, startX + side * 6, y - (side === 1 ? 16 : -12), 15, 11, 0);
    on.fillStyle = '#f0d9c8';
    if (side === -1) blob(on, endX + 2, endY, 9, 13, 0.2);
  }
};

/** The thumb of the lower hand lies down the handle; how far to which side says how the hand is turned. */
const paintThumb = (on: SKRSContext2D, look: Look, turnDeg: number): void => {
  const top = at(0.1);
  const lean = Math.sin((turnDeg * Math.PI) / 180) * 60;
  capsule(on, look, {
    ...{ startX: top.x + 74, startY: top.y - 8 },
    ...{ endX: top.x + 2 - lean, endY: top.y + 62, width: 60 },
  });
  on.fillStyle = '#f0d9c8';
  blob(on, top.x + 2 - lean, top.y + 66, 15, 19, 0.7);
};

type Capsule = { startX: number; startY: number; endX: number; endY: number; width: number };
const capsule = (on: SKRSContext2D, look: Look, one: Capsule): void => {
  on.lineCap = 'round';
  for (const [colour, width] of [
    [look.skinShade, one.width],
    [look.skin, one.width - 12],
  ] as const) {
    on.strokeStyle = colour;
    on.lineWidth = width;
    on.beginPath();
    on.moveTo(one.startX, one.startY);
    on.quadraticCurveTo((one.startX + one.endX) / 2, one.startY - 8, one.endX, one.endY);
    on.stroke();
  }
};

const blob = (on: SKRSContext2D, x: number, y: number, rx: number, ry: number, turn: number): void => {
  on.beginPath();
  on.ellipse(x, y, rx, ry, turn, 0, 2 * Math.PI);
  on.fill();
};
