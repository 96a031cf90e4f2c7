import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleDisagreement } from './camera/scale-warnings.ts';
import type { Mark, Picture, Setting } from './marks/marks.ts';
import { plantedFully, plantedMarks, plantedPicture } from './marks/planted-marks.ts';
import { measure } from './measure.ts';
import { tempoOf } from './tempo.ts';

const setting: Setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' };
const marks = plantedFully();
const change = (n: number, to: Partial<Mark>): readonly Mark[] =>
  marks.map((mark, i) => (i === n ? { ...mark, ...to } : mark));
const measured =
  (given: readonly Mark[], picture: Picture = plantedPicture) =>
  () =>
    measure(given, picture, setting);

describe('bad input gives an error that names the thing, never a number', () => {
  it.each([
    ['no number', change(0, { x: Number.NaN }), /The ball mark has no place/],
    ['infinity', change(1, { y: Number.POSITIVE_INFINITY }), /The lead-ankle mark has no place/],
    ['outside', change(2, { x: -0.1 }), /The trail-ankle mark at/],
    ['no such frame', change(0, { frame: 1e9 }), /names frame 1000000000/],
  ] as const)('a mark: %s', (_, given, why) => {
    expect(measured(given)).toThrow(RangeError);
    expect(measured(given)).toThrow(why);
  });

  it.each([
    ['no width', { ...plantedPicture, widthPx: 0 }, /width of the picture is 0/],
    ['no height', { ...plantedPicture, heightPx: Number.NaN }, /height of the picture is NaN/],
    ['frames out of order', { ...plantedPicture, frameTimesS: [0, 0.1, 0.05] }, /Frame 2 is not later/],
    ['a frame without a time', { ...plantedPicture, frameTimesS: [0, Number.NaN] }, /Frame 1 has no time/],
  ] as const)('a picture: %s', (_, picture, why) => {
    expect(measured(marks, picture)).toThrow(why);
  });

  it('a million marks are refused at once', () => {
    const [mark] = marks;
    const many = Array.from({ length: 1_000_000 }, () => mark).filter((one) => one !== undefined);
    expect(measured(many)).toThrow(/1000000 marks are more than a swing has/);
  });

  it('all marks in one place give no scale and no number that is not finite', () => {
    const [first] = marks;
    const one = marks.map((mark) => ({ ...mark, x: first?.x ?? 0, y: first?.y ?? 0 }));
    const { measurements, scale } = measured(one)();
    expect(scale).toBeNull();
    for (const { value, u } of measurements) expect(Number.isFinite(value) && Number.isFinite(u)).toBe(true);
  });

  it('whatever the marks: finite numbers with a doubt, or words', () => {
    const anywhere = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 1080 }), fc.integer({ min: 0, max: 1920 })),
      {
        minLength: marks.length,
        maxLength: marks.length,
      },
    );
    fc.assert(
      fc.property(anywhere, (places) => {
        const given = marks.map((mark, i) => ({ ...mark, x: places[i]?.[0] ?? 0, y: places[i]?.[1] ?? 0 }));
        const { measurements, refusals } = measured(given)();
        for (const { value, u } of measurements) {
          expect(Number.isFinite(value)).toBe(true);
          expect(u).toBeGreaterThan(0);
        }
        for (const { words } of refusals) expect(words).toMatch(/^[A-Z].*\.$/);
      }),
      { numRuns: 60, seed: 15 },
    );
  });

  it('a scale of zero, a tempo without time', () => {
    const scale = { from: 'stick', mmPerPx: 2, u: 0.05 } as const;
    expect(() => scaleDisagreement(scale, { ...scale, mmPerPx: 0 })).toThrow(/positive/);
    expect(() => tempoOf({ backS: 1, downS: 0, frameS: 1 / 240 })).toThrow(/order/);
    expect(() => tempoOf({ backS: 1, downS: 0.01, frameS: 0.01 })).toThrow(/short/);
    expect(() => measure(plantedMarks(), plantedPicture, setting)).not.toThrow();
  });
});
