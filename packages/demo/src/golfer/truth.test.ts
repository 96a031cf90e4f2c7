import { describe, expect, it } from 'vitest';
import { project, type View } from './camera.ts';
import { drawShot } from './draw-swing.ts';
import { moments } from './moments.ts';
import { pointsOfView, spotsOf } from './points.ts';
import { pixelsOf, sceneOf } from './truth.ts';

describe.each<View>(['face-on', 'down-the-line'])('truth %s', (view) => {
  const still = drawShot(31, { view, camera: { readoutS: 0 } });

  it('has every point of the view at the pixel where the camera projects it', () => {
    const { swing, camera, truth } = still;
    for (const moment of moments) {
      const spots = spotsOf(swing.poseAt(truth.positions[moment] / truth.fps));
      for (const point of pointsOfView[view]) {
        const [x, y] = project(camera, sceneOf(swing), spots[point]);
        expect(truth.points[moment][point][0]).toBeCloseTo(x, 1);
        expect(truth.points[moment][point][1]).toBeCloseTo(y, 1);
      }
    }
  });

  it('reads a moving clubhead at the time of its row', () => {
    const { swing, camera, truth } = still;
    const rolling = { ...camera, readoutS: 0.016 };
    const frameS = truth.positions['shaft-parallel-down'] / truth.fps;
    const [x, y] = pixelsOf(swing, rolling, frameS).clubhead;
    const rowS = frameS + 0.016 * (y / camera.heightPx - 0.5);
    const [px, py] = project(camera, sceneOf(swing), swing.clubAt(rowS).head);
    expect(x).toBeCloseTo(px, 1);
    expect(y).toBeCloseTo(py, 1);
  });

  it('is read within half a frame of each moment', () => {
    const { truth } = still;
    for (const moment of moments.slice(1)) {
      const off = Math.abs(truth.positions[moment] / truth.fps - truth.momentTimesS[moment]);
      expect(off).toBeLessThanOrEqual(0.5 / truth.fps + 1e-5);
    }
  });
});

describe('moments by their own definition', () => {
  it('the shaft is level, the lead arm is level, the club turns back', () => {
    const { swing, truth } = drawShot(44, { view: 'face-on' });
    const at = (moment: (typeof moments)[number]) => swing.poseAt(truth.momentTimesS[moment]);
    for (const moment of ['shaft-parallel-back', 'shaft-parallel-down', 'shaft-parallel-through'] as const) {
      expect(Math.abs(at(moment).club.direction.y)).toBeLessThan(0.003);
    }
    for (const moment of ['lead-arm-parallel-back', 'lead-arm-parallel-down'] as const) {
      const { wrist, shoulder } = at(moment).leadArm;
      expect(Math.abs(wrist.y - shoulder.y)).toBeLessThan(1);
    }
    expect(truth.momentTimesS.top).toBeCloseTo(swing.timing.top, 2);
  });
});
