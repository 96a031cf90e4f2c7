import type { SKRSContext2D } from '@napi-rs/canvas';
import { type Camera, type Pixel, project } from './camera.ts';
import { ballSpot } from './club-motion.ts';
import { fillPolygon, strokeLine } from './paint-shapes.ts';
import { spot } from './space.ts';
import { stickEnds } from './truth.ts';

/** The still picture behind every frame: sky, tree line, grass, a mat with its line, a stick beside the ball. */
export function paintRange(pen: SKRSContext2D, camera: Camera, hand: 'right' | 'left'): void {
  const place = (x: number, z: number): Pixel => project(camera, hand, spot(x, 0, z));
  const horizon = camera.heightPx / 2;
  paintSky(pen, camera, horizon);
  paintTrees(pen, camera, horizon);
  const grass = pen.createLinearGradient(0, horizon, 0, camera.heightPx);
  grass.addColorStop(0, '#8aa372');
  grass.addColorStop(0.3, '#7c9a62');
  grass.addColorStop(1, '#668650');
  pen.fillStyle = grass;
  pen.fillRect(0, horizon, camera.widthPx, camera.heightPx - horizon);
  for (let far = 2; far < 12; far += 2) {
    const band = [place(-30_000, -2400 * far), place(30_000, -2400 * far)] as const;
    const next = [place(30_000, -2400 * (far + 1)), place(-30_000, -2400 * (far + 1))] as const;
    fillPolygon(pen, [...band, ...next], 'rgba(255,255,255,0.07)');
  }
  fillPolygon(pen, [place(-900, -420), place(880, -420), place(880, 1230), place(-900, 1230)], '#3c6b4f');
  fillPolygon(pen, [place(-870, -390), place(850, -390), place(850, 1200), place(-870, 1200)], '#47795a');
  strokeLine(pen, place(-850, ballSpot.z), place(830, ballSpot.z), 2, 'rgba(255,255,255,0.28)');
  const [from, to] = stickEnds;
  strokeLine(pen, project(camera, hand, from), project(camera, hand, to), 5, '#d8692a');
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
