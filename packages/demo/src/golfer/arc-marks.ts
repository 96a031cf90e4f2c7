import { drawNormal } from '@ballfirst/numbers/draw-normal';
import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { project, seenAtS } from './camera.ts';
import type { Shot } from './draw-swing.ts';
import { sceneOf } from './truth.ts';

/** The clubhead on one frame near the ball: `timeS` is that of the frame, `rowTimeS` when its row was read. */
export type HeadMark = {
  readonly frame: number;
  readonly timeS: number;
  readonly rowTimeS: number;
  readonly x: number;
  readonly y: number;
};

/**
 * The clubhead on every frame within `reachMm` of the ball along the line, clicked at the middle of its streak.
 *
 * @param clickPx 1 SD of a click at 1080 pixels; the streak of the exposure adds its own share, length2 / 12
 */
export function headMarks(shot: Shot, seed: number, reachMm = 700, clickPx = 2): readonly HeadMark[] {
  const { swing, camera, truth } = shot;
  const scene = sceneOf(swing);
  const random = seededRandom(seed);
  const s = (clickPx * Math.min(camera.widthPx, camera.heightPx)) / 1080;
  const head = (timeS: number) => swing.clubAt(timeS).head;
  const marks: HeadMark[] = [];
  const around = Math.ceil(0.04 * truth.fps);
  for (let frame = truth.positions.impact - around; frame <= truth.positions.impact + around; frame += 1) {
    const timeS = frame / truth.fps;
    const rowTimeS = seenAtS(camera, scene, head, timeS);
    if (Math.abs(head(rowTimeS).x) > reachMm) continue;
    const [x, y] = project(camera, scene, head(rowTimeS));
    const [x0, y0] = project(camera, scene, head(rowTimeS - camera.exposureS / 2));
    const [x1, y1] = project(camera, scene, head(rowTimeS + camera.exposureS / 2));
    const streak = clickPx === 0 ? 0 : drawNormal(random) / Math.sqrt(12);
    const click = () => s * (random() < 0.1 ? 3 : 1) * drawNormal(random);
    marks.push({
      frame,
      timeS,
      rowTimeS,
      x: x + click() + streak * (x1 - x0),
      y: y + click() + streak * (y1 - y0),
    });
  }
  return marks;
}
