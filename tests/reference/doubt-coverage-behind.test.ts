import { drawNormal } from '@ballfirst/numbers/draw-normal';
import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { usualCamera } from '@ballfirst/swing/camera/camera';
import { depthOf } from '@ballfirst/swing/camera/depth';
import { clickDoubt } from '@ballfirst/swing/doubt/click-doubt';
import { clothingDoubtMm } from '@ballfirst/swing/doubt/clothing-doubt';
import type { Mark } from '@ballfirst/swing/marks/marks';
import { behindPicture, plantedBehind, soundBehind } from '@ballfirst/swing/marks/planted-behind';
import { measure } from '@ballfirst/swing/measure';
import { describe, expect, it } from 'vitest';

// Source: the definition of a 95 % interval. Errors are drawn from the stated doubts: camera, depths, clothing, clicks.
// The club is the stated one and proxies are exact here, so that some intervals are a little wide.
const setting = { view: 'down-the-line', hand: 'right', club: '8-iron', swingLength: 'full' } as const;
const swings = 400;
const truth: Readonly<Record<string, number>> = {
  'trunk-bend-at-address': soundBehind.trunkBendDeg,
  'hands-to-thighs-at-address': soundBehind.handsToThighs,
  'hands-ahead-of-toe-line': soundBehind.handsBeyondToes,
  'seat-toward-ball-address-impact': soundBehind.seatTowardBall,
  'hands-toward-ball-address-impact': soundBehind.handsTowardBall,
  'hands-height-address-impact': soundBehind.handsRise,
  'head-height-address-impact': soundBehind.headRise,
  'shaft-steeper-at-lead-arm-down': soundBehind.shaftSteeperDeg,
  'clubhead-outside-hands-at-shaft-parallel-back': soundBehind.clubheadOutsideBack,
  'clubhead-outside-hands-at-shaft-parallel-down': soundBehind.clubheadOutsideDown,
  'toe-line-to-target-stick': soundBehind.toesOpenDeg,
};

function marksWithErrors(normal: () => number): readonly Mark[] {
  const camera = {
    distanceMm: usualCamera.distanceMm + usualCamera.uDistanceMm * normal(),
    lensHeightMm: usualCamera.lensHeightMm + usualCamera.uLensHeightMm * normal(),
    yawDeg: usualCamera.uYawDeg * normal(),
    rollDeg: usualCamera.uRollDeg * normal(),
  };
  const once = new Map<string, number>();
  const drawn = (name: string) => {
    const known = once.get(name) ?? normal();
    once.set(name, known);
    return known;
  };
  const mmPerPx = camera.distanceMm / soundBehind.focalPx;
  const marks = plantedBehind(camera, (place) => {
    const { source, u } = depthOf(setting.view, place);
    return u * drawn(source);
  });
  return marks.map((mark) => {
    const { uPx: click, uHabitPx: habit } = clickDoubt(mark, behindPicture);
    // Half of the variance of clothing is the same at every moment.
    const worn = Math.SQRT1_2 * (drawn(`${mark.point}/clothing`) + normal());
    const clothing = (clothingDoubtMm(mark.point) * worn) / mmPerPx;
    const habitOf = (axis: string) => habit * drawn(`${mark.point}/${axis}`);
    return {
      ...mark,
      x: mark.x + click * normal() + habitOf('x') + clothing,
      y: mark.y + click * normal() + habitOf('y'),
    };
  });
}

describe('the doubt that is shown, from behind', () => {
  const random = seededRandom(2027);
  const inside: Record<string, number> = {};
  for (let swing = 0; swing < swings; swing += 1) {
    const marks = marksWithErrors(() => drawNormal(random));
    for (const { key, value, u } of measure(marks, behindPicture, setting).measurements) {
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
