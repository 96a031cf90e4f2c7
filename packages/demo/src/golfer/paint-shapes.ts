import type { SKRSContext2D } from '@napi-rs/canvas';
import type { Pixel } from './camera.ts';

/** A round disc in pixels: an end of a limb. */
export type Disc = { readonly at: Pixel; readonly radius: number };

/** A filled limb that narrows from one disc to another. */
export function fillLimb(pen: SKRSContext2D, from: Disc, to: Disc, colour: string): void {
  const [dx, dy] = [to.at[0] - from.at[0], to.at[1] - from.at[1]];
  const distance = Math.hypot(dx, dy);
  pen.fillStyle = colour;
  pen.beginPath();
  if (distance <= Math.abs(from.radius - to.radius) + 0.01) {
    const larger = from.radius > to.radius ? from : to;
    pen.arc(larger.at[0], larger.at[1], larger.radius, 0, 2 * Math.PI);
  } else {
    const heading = Math.atan2(dy, dx);
    const spread = Math.acos((from.radius - to.radius) / distance);
    pen.arc(from.at[0], from.at[1], from.radius, heading + spread, heading - spread);
    pen.arc(to.at[0], to.at[1], to.radius, heading - spread, heading + spread);
  }
  pen.closePath();
  pen.fill();
}

/** A bent limb with its shaded side: the lit part lies a little up and towards the light on the right. */
export function fillShadedLimb(pen: SKRSContext2D, discs: readonly Disc[], lit: string, shade: string): void {
  fillChain(pen, discs, shade);
  fillChain(pen, discs.map(towardsLight), lit);
}

function fillChain(pen: SKRSContext2D, discs: readonly Disc[], colour: string): void {
  discs.forEach((disc, i) => {
    const next = discs[i + 1];
    if (next !== undefined) fillLimb(pen, disc, next, colour);
  });
}

const towardsLight = (disc: Disc): Disc => ({
  at: [disc.at[0] + disc.radius * 0.1, disc.at[1] - disc.radius * 0.05],
  radius: disc.radius * 0.87,
});

/** A closed smooth outline through corners. */
export function fillOutline(pen: SKRSContext2D, corners: readonly Pixel[], colour: string): void {
  const middle = (a: Pixel, b: Pixel): Pixel => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const last = corners.at(-1);
  const first = corners[0];
  if (first === undefined || last === undefined) throw new RangeError('An outline needs corners');
  pen.fillStyle = colour;
  pen.beginPath();
  pen.moveTo(...middle(last, first));
  corners.forEach((corner, i) => {
    const next = middle(corner, corners[i + 1] ?? first);
    pen.quadraticCurveTo(corner[0], corner[1], next[0], next[1]);
  });
  pen.closePath();
  pen.fill();
}

export function fillPolygon(pen: SKRSContext2D, corners: readonly Pixel[], colour: string): void {
  pen.fillStyle = colour;
  pen.beginPath();
  for (const [x, y] of corners) pen.lineTo(x, y);
  pen.closePath();
  pen.fill();
}

export function strokeLine(pen: SKRSContext2D, from: Pixel, to: Pixel, width: number, colour: string): void {
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.lineCap = 'round';
  pen.beginPath();
  pen.moveTo(...from);
  pen.lineTo(...to);
  pen.stroke();
}

export function fillOval(
  pen: SKRSContext2D,
  at: Pixel,
  rx: number,
  ry: number,
  colour: string,
  turn = 0,
): void {
  pen.fillStyle = colour;
  pen.beginPath();
  pen.ellipse(at[0], at[1], rx, ry, turn, 0, 2 * Math.PI);
  pen.fill();
}

/** A line through several pixels: a shaft that a rolling shutter bends. */
export function strokePath(pen: SKRSContext2D, path: readonly Pixel[], width: number, colour: string): void {
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  pen.beginPath();
  path.forEach(([x, y], i) => {
    if (i === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
  pen.stroke();
}
