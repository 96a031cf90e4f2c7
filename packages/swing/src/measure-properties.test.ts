import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mark, Picture, Setting } from './marks/marks.ts';
import { plantedBehind } from './marks/planted-behind.ts';
import { plantedFully, plantedPicture } from './marks/planted-marks.ts';
import { measure } from './measure.ts';
import { read } from './read.ts';

const faceOn: Setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' };
const behind: Setting = { ...faceOn, view: 'down-the-line' };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const values = (marks: readonly Mark[], setting: Setting, picture: Picture = plantedPicture) =>
  new Map(measure(marks, picture, setting).measurements.map((one) => [one.key, one]));
const valueAt = (marks: readonly Mark[], setting: Setting, key: string) =>
  values(marks, setting).get(key)?.value ?? Number.NaN;

describe('measurements', () => {
  it('do not care how many pixels the picture has, from behind either', () => {
    fc.assert(
      fc.property(between(0.4, 3), (factor) => {
        const marks = plantedBehind();
        const grown = marks.map((mark) => ({ ...mark, x: mark.x * factor, y: mark.y * factor }));
        const picture = {
          ...plantedPicture,
          widthPx: plantedPicture.widthPx * factor,
          heightPx: plantedPicture.heightPx * factor,
        };
        const large = values(grown, behind, picture);
        for (const [key, { value }] of values(marks, behind))
          expect(large.get(key)?.value).toBeCloseTo(value, 5);
      }),
      { numRuns: 20, seed: 16 },
    );
  });

  it('do not care in which order the marks come', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray([...plantedFully()], { minLength: plantedFully().length }),
        (shuffled) => {
          const plain = values(plantedFully(), faceOn);
          for (const [key, { value, u }] of values(shuffled, faceOn)) {
            expect(value).toBe(plain.get(key)?.value);
            expect(u).toBeCloseTo(plain.get(key)?.u ?? Number.NaN, 9);
          }
        },
      ),
      { numRuns: 10, seed: 17 },
    );
  });

  it('differences between moments do not feel a phone that is rolled, but for its cosine', () => {
    fc.assert(
      fc.property(between(-3, 3), (rollDeg) => {
        const level = plantedFully({ hipToTop: -60 });
        const rolled = plantedFully({ hipToTop: -60, rollDeg });
        const key = 'hip-shift-address-top';
        expect(Math.abs(valueAt(rolled, faceOn, key) - valueAt(level, faceOn, key))).toBeLessThan(1.5);
      }),
      { numRuns: 20, seed: 18 },
    );
  });

  it('move the way the body does', () => {
    const step = between(1, 80);
    fc.assert(
      fc.property(step, (more) => {
        const back = valueAt(plantedFully({ hipAddress: -70 - more }), faceOn, 'hip-middle-behind-ball');
        expect(back).toBeGreaterThan(valueAt(plantedFully(), faceOn, 'hip-middle-behind-ball'));
        const seat = 'seat-toward-ball-address-impact';
        const closer = valueAt(plantedBehind({ seatTowardBall: 15 + more }), behind, seat);
        expect(closer).toBeGreaterThan(valueAt(plantedBehind(), behind, seat));
      }),
      { numRuns: 20, seed: 19 },
    );
  });

  it('read past an edge the more surely, the farther they lie past it', () => {
    const band = { low: -40, high: 20, label: 'common practice' } as const;
    fc.assert(
      fc.property(between(-200, 200), between(0, 100), between(0.1, 60), (value, less, u) => {
        const at = (where: number) =>
          read(
            {
              key: 'hip-shift-address-top',
              unit: 'mm',
              value: where,
              u,
              uStatistical: u,
              proxy: false,
              positions: [],
            },
            band,
          );
        const [near, far] = [at(value), at(value - less)];
        expect(far.probabilityBelow).toBeGreaterThanOrEqual(near.probabilityBelow);
        expect(far.probabilityAbove).toBeLessThanOrEqual(near.probabilityAbove);
        expect(near.probabilityBelow + near.probabilityAbove).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { seed: 20 },
    );
  });
});
