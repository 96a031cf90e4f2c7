import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mark, Point, Setting } from '../marks/marks.ts';
import { placeMarks } from '../marks/placed-marks.ts';
import { type PlantedSwing, plantedFully, plantedPicture, soundSwing } from '../marks/planted-marks.ts';
import { measure } from '../measure.ts';
import { type Spot3, seeSpot } from './see-spot.ts';
import { stickTilt, usualStick } from './stick-tilt.ts';

const setting: Setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' };
const half = usualStick.lengthMm / 2;

/** The swing with a stick of `lengthMm` that lies on the target line, on the ground of the ball. */
const withStick = (changes: Partial<PlantedSwing> = {}, stretch = 1): readonly Mark[] => {
  const swing = { ...soundSwing, ...changes };
  const end = (point: Point, at: Spot3): Mark => {
    const { levelPx, upPx } = seeSpot(at, swing);
    const x = plantedPicture.widthPx / 2 + (swing.hand === 'right' ? levelPx : -levelPx);
    return {
      position: 'address',
      point,
      frame: 0,
      x,
      y: plantedPicture.heightPx / 2 - upPx,
      source: 'coach',
    };
  };
  return [
    ...plantedFully(changes),
    end('target-stick', [-half * stretch, 0, 0]),
    end('target-stick-ahead', [half * stretch, 0, 0]),
  ];
};
const value = (marks: readonly Mark[], key: string, hand: Setting['hand'] = 'right') =>
  measure(marks, plantedPicture, { ...setting, hand }).measurements.find((one) => one.key === key);

describe('a stick on the target line', () => {
  it('gives a better scale than the club, and takes out the roll of the phone', () => {
    const marks = withStick({ rollDeg: 3 });
    const plain = plantedFully({ rollDeg: 3 });
    expect(measure(marks, plantedPicture, setting).scale?.from).toBe('stick');
    const [better, worse] = [value(marks, 'head-behind-ball'), value(plain, 'head-behind-ball')];
    expect(Math.abs((better?.value ?? 0) - 60)).toBeLessThan(3);
    expect(Math.abs((worse?.value ?? 0) - 60)).toBeGreaterThan(50);
    expect(better?.u ?? 0).toBeLessThan(worse?.u ?? 0);
  });

  it('keeps planted lengths within three of its doubts, rolled, turned and far away', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const cameras = fc.record({
      distanceMm: between(3000, 5000),
      lensHeightMm: between(700, 1300),
      yawDeg: between(-8, 8),
      rollDeg: between(-4, 4),
    });
    fc.assert(
      fc.property(cameras, (camera) => {
        const marks = withStick(camera);
        for (const [key, known] of [
          ['head-behind-ball', 60],
          ['handle-ahead-of-ball', 45],
          ['hip-shift-top-lead-arm-down', 55],
          ['head-height-address-impact', -15],
        ] as const) {
          const one = value(marks, key);
          expect(Math.abs((one?.value ?? Number.NaN) - known), key).toBeLessThan(3 * (one?.u ?? 0));
        }
      }),
      { numRuns: 40, seed: 14 },
    );
  });

  it('reads a left-hander exactly as a right-hander', () => {
    const right = value(withStick({ rollDeg: 1 }), 'head-behind-ball');
    // The phone rolls the other way in the mirror.
    const left = value(withStick({ rollDeg: 1, hand: 'left' }), 'head-behind-ball', 'left');
    expect(left?.value).toBeCloseTo(right?.value ?? Number.NaN, 6);
  });

  // Source: two clicks of e pixels on L pixels: sqrt(2) e / L; e is 2 pixels, and one click in ten goes three times astray.
  it('doubts its tilt by the clicks at its ends', () => {
    const tilt = stickTilt(placeMarks(withStick({ rollDeg: 2 }), plantedPicture, setting));
    expect(tilt?.deg).toBeCloseTo(2, 1);
    expect(tilt?.uDeg).toBeCloseTo(
      ((Math.SQRT2 * 2 * Math.sqrt(1.8)) / (tilt?.lengthPx ?? 0)) * (180 / Math.PI),
      3,
    );
    expect(stickTilt(placeMarks(plantedFully(), plantedPicture, setting))).toBeNull();
  });

  it('warns where stick and club disagree by more than their doubt', () => {
    expect(measure(withStick(), plantedPicture, setting).warnings).toEqual([]);
    const [warning] = measure(withStick({}, 0.75), plantedPicture, setting).warnings;
    expect(warning).toMatch(/off axis/);
  });
});
