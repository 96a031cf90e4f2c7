import { drawNormal } from '@ballfirst/numbers/draw-normal';
import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { usualCamera } from '@ballfirst/swing/camera/camera';
import { clickDoubt } from '@ballfirst/swing/doubt/click-doubt';
import { clothingDoubtMm } from '@ballfirst/swing/doubt/clothing-doubt';
import type { Mark } from '@ballfirst/swing/marks/marks';
import { plantedMarks, plantedPicture, soundSwing } from '@ballfirst/swing/marks/planted-marks';
import { measure } from '@ballfirst/swing/measure';
import { describe, expect, it } from 'vitest';

// Source: the definition of a 95 % interval. Errors are drawn from the stated doubts; the pinhole that makes the marks
// is written apart from the one that reads them. Club and depths are the stated means, so intervals are a little wide.
const setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' } as const;
const swings = 400;
const truth: Readonly<Record<string, number>> = {
  'hip-shift-address-top': soundSwing.hipToTop,
  'head-shift-address-top': soundSwing.headToTop,
  'hip-shift-top-lead-arm-down': soundSwing.hipFromTop,
  'handle-ahead-of-ball': soundSwing.gripEndAddress,
  'head-behind-ball': -soundSwing.headAddress,
  'hip-past-ball-at-finish': soundSwing.hipFinish,
  'hip-over-lead-ankle-at-finish': soundSwing.hipFinish - soundSwing.leadAnkle,
  'grip-end-to-ball-line-at-shaft-parallel-down': soundSwing.gripEndShaftParallelDown,
};

function marksWithErrors(normal: () => number): readonly Mark[] {
  const camera = {
    distanceMm: usualCamera.distanceMm + usualCamera.uDistanceMm * normal(),
    lensHeightMm: usualCamera.lensHeightMm + usualCamera.uLensHeightMm * normal(),
    yawDeg: usualCamera.uYawDeg * normal(),
    rollDeg: usualCamera.uRollDeg * normal(),
  };
  const mmPerPx = (camera.distanceMm + 700) / soundSwing.focalPx;
  const once = new Map<string, number>();
  const drawnOnce = (name: string) => {
    const known = once.get(name) ?? normal();
    once.set(name, known);
    return known;
  };
  return plantedMarks(camera).map((mark) => {
    const { uPx: click, uHabitPx: habit } = clickDoubt(mark, plantedPicture);
    const shared = drawnOnce(`${mark.point}/clothing`);
    // Half of the variance of clothing is the same at every moment.
    const clothing = (clothingDoubtMm(mark.point) * Math.SQRT1_2 * (shared + normal())) / mmPerPx;
    const habitOf = (axis: string) => habit * drawnOnce(`${mark.point}/${axis}`);
    return {
      ...mark,
      x: mark.x + click * normal() + habitOf('x') + clothing,
      y: mark.y + click * normal() + habitOf('y'),
    };
  });
}

describe('the doubt that is shown', () => {
  const random = seededRandom(2026);
  const inside: Record<string, number> = {};
  for (let swing = 0; swing < swings; swing += 1) {
    const marks = marksWithErrors(() => drawNormal(random));
    for (const { key, value, u } of measure(marks, plantedPicture, setting).measurements) {
      const known = truth[key];
      if (known !== undefined && Math.abs(value - known) < 1.959964 * u) inside[key] = (inside[key] ?? 0) + 1;
    }
  }

  // Three binomial standard errors of 400 swings are 3.3 points.
  it.each(Object.keys(truth))('%s: 95 % intervals hold the truth', (key) => {
    const share = (inside[key] ?? 0) / swings;
    expect(share).toBeGreaterThan(0.917);
    expect(share).toBeLessThanOrEqual(0.993);
  });
});
