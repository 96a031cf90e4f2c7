import type { SKRSContext2D } from '@napi-rs/canvas';
import type { Camera, Pixel } from './camera.ts';
import type { Lens } from './paint-lens.ts';
import { fillPolygon, strokeLine } from './paint-shapes.ts';
import { type Spot, spot } from './space.ts';
import type { Swing } from './swing.ts';

/** The still picture behind every frame: sky, tree line, grass, a mat with its line, a stick beyond the ball. */
export function paintRange(pen: SKRSContext2D, camera: Camera, lens: Lens, swing: Swing): void {
  const horizon = camera.heightPx / 2;
  const ballZ = swing.stance.ball.z;
  paintSky(pen, camera, horizon);
  paintTrees(pen, camera, horizon);
  const grass = pen.createLinearGradient(0, horizon, 0, camera.heightPx);
  grass.addColorStop(0, '#8aa372');
  grass.addColorStop(0.3, '#7c9a62');
  grass.addColorStop(1, '#668650');
  pen.fillStyle = grass;
  pen.fillRect(0, horizon, camera.widthPx, camera.heightPx - horizon);
  // A strip of grass is so far away; face-on that is behind the player, from behind it is towards the target.
  const far = (awayMm: number, asideMm: number): Spot =>
    lens.faceOn ? spot(asideMm, 0, -awayMm) : spot(awayMm, 0, asideMm);
  for (let strip = 2; strip < 12; strip += 2) {
    const [near, next] = [2400 * strip, 2400 * (strip + 1)];
    const corners = [far(near, -30_000), far(near, 30_000), far(next, 30_000), far(next, -30_000)];
    fillPolygon(pen, corners.map(lens.pixel), 'rgba(255,255,255,0.07)');
  }
  if (!lens.faceOn) paintFlag(pen, lens, ballZ);
  paintMat(pen, lens, ballZ);
  const [from, to] = swing.stance.stick;
  strokeLine(pen, lens.pixel(from), lens.pixel(to), 5, '#d8692a');
}

function paintMat(pen: SKRSContext2D, lens: Lens, ballZ: number): void {
  const ground = (corners: readonly (readonly [x: number, z: number])[]): Pixel[] =>
    corners.map(([x, z]) => lens.pixel(spot(x, 0, z)));
  const mat = (edge: number) => [
    [-900 + edge, -420 + edge] as const,
    [880 - edge, -420 + edge] as const,
    [880 - edge, ballZ + 430 - edge] as const,
    [-900 + edge, ballZ + 430 - edge] as const,
  ];
  fillPolygon(pen, ground(mat(0)), '#3c6b4f');
  fillPolygon(pen, ground(mat(30)), '#47795a');
  const [back, front] = ground([
    [-850, ballZ],
    [830, ballZ],
  ]);
  if (back !== undefined && front !== undefined) strokeLine(pen, back, front, 2, 'rgba(255,255,255,0.28)');
}

/** A green with its flag on the target line, far away. */
function paintFlag(pen: SKRSContext2D, lens: Lens, ballZ: number): void {
  const green = (share: number): Pixel[] =>
    Array.from({ length: 24 }, (_, i) => {
      const turn = (i / 24) * 2 * Math.PI;
      return lens.pixel(
        spot(70_000 + 9000 * share * Math.sin(turn), 0, ballZ + 7000 * share * Math.cos(turn)),
      );
    });
  fillPolygon(pen, green(1), '#9bb883');
  const foot = lens.pixel(spot(70_000, 0, ballZ));
  const top = lens.pixel(spot(70_000, 2600, ballZ));
  strokeLine(pen, foot, top, 1.5, '#f2f0e8');
  fillPolygon(pen, [top, [top[0] + 13, top[1] + 4], [top[0], top[1] + 9]], '#c8452f');
}

function paintSky(pen: SKRSContext2D, camera: Camera, horizon: number): void {
  const sky = pen.createLinearGradient(0, 0, 0, horizon);
  sky.addColorStop(0, '#b9cfdd');
  sky.addColorStop(1, '#e6ebe6');
  pen.fillStyle = sky;
  pen.fillRect(0, 0, camera.widthPx, horizon);
}

function paintTrees(pen: SKRSContext2D, camera: Camera, horizon: number): void {
  for (const [height, step, colour] of [
    [92, 61, '#a9bba8'],
    [58, 43, '#8ea68b'],
  ] as const) {
    pen.fillStyle = colour;
    pen.fillRect(0, horizon - height * 0.55, camera.widthPx, height * 0.55 + 1);
    for (let x = -20; x < camera.widthPx + 40; x += step) {
      const crown = height * (0.5 + 0.16 * Math.sin(x * 0.9) + 0.08 * Math.sin(x * 0.37));
      pen.beginPath();
      pen.ellipse(x, horizon - height * 0.45, step * 0.8, crown, 0, 0, 2 * Math.PI);
      pen.fill();
    }
  }
}
