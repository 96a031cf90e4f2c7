import { ballMiddleMm } from '@ballfirst/swing/camera/camera';
import { focalFromClub } from '@ballfirst/swing/camera/focal-from-club';
import { plantedMarks, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { measure } from '@ballfirst/swing/measure';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('pinhole geometry', () => {
  // Source: half of the smallest diameter, 1.680 in = 42.67 mm, of the Equipment Rules.
  it('sets the middle of the ball half a diameter above the ground', () => {
    expect(ballMiddleMm).toBeCloseTo(42.67 / 2, 6);
  });

  // Source: closed form; the club is projected point by point and the focal length must come back.
  it('finds the focal length from a club that was projected with it', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        between(3000, 5000),
        between(600, 1400),
        between(800, 1200),
        between(50, 70),
        between(800, 4000),
        (distanceMm, lensHeightMm, clubLengthMm, lieDeg, focalPx) => {
          const lie = (lieDeg * Math.PI) / 180;
          const seen = (heightMm: number, depthMm: number) =>
            (focalPx * (heightMm - lensHeightMm)) / (distanceMm + depthMm);
          const risePx =
            seen(clubLengthMm * Math.sin(lie), clubLengthMm * Math.cos(lie)) - seen(ballMiddleMm, 0);
          const found = focalFromClub({ risePx, clubLengthMm, lieDeg, distanceMm, lensHeightMm });
          expect(found / focalPx).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: 100, seed: 71 },
    );
  });

  // Source: derived: a camera turned by 4 degrees moves a point 0.421 m deeper by 0.421 sin 4 deg = 29 mm; the doubt
  // of the handle over the ball must hold at least that.
  it('doubts a length between two depths by the yaw nobody measured', () => {
    const setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' } as const;
    const { measurements } = measure(plantedMarks(), plantedPicture, setting);
    const handle = measurements.find(({ key }) => key === 'handle-ahead-of-ball');
    expect(handle?.u).toBeGreaterThan(420.8 * Math.sin((4 * Math.PI) / 180));
    expect(handle?.u).toBeLessThan(40);
  });
});
