import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mark, Setting } from './marks/marks.ts';
import {
  type PlantedSwing,
  plantedFully,
  plantedMarks,
  plantedPicture,
  soundSwing,
} from './marks/planted-marks.ts';
import { type Measured, measure } from './measure.ts';

const setting: Setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' };
const lengthOf = (measured: Measured, key: string) => {
  const found = measured.measurements.find((measurement) => measurement.key === key);
  if (found === undefined) throw new Error(`${key} was not measured`);
  return found.value;
};

// Lengths that a body could have, in mm.
const swings: fc.Arbitrary<Partial<PlantedSwing>> = fc.record({
  hipAddress: fc.double({ min: -180, max: 40, noNaN: true }),
  gripEndAddress: fc.double({ min: -150, max: 120, noNaN: true }),
  hipToTop: fc.double({ min: -140, max: 60, noNaN: true }),
  hipFromTop: fc.double({ min: -60, max: 120, noNaN: true }),
  gripEndShaftParallelDown: fc.double({ min: -300, max: 60, noNaN: true }),
  hipFinish: fc.double({ min: -150, max: 200, noNaN: true }),
});

describe('measure', () => {
  it('gives at least eight measurements from the twelve marks of a fat shot, and says why not for the rest', () => {
    const { measurements, refusals, scale } = measure(plantedMarks(), plantedPicture, setting);
    expect(measurements.length).toBeGreaterThanOrEqual(8);
    expect(new Set(refusals.map(({ why }) => why))).toEqual(new Set(['marks-missing', 'wrong-view']));
    expect(refusals).toContainEqual({
      key: 'trunk-lean-at-top',
      why: 'marks-missing',
      words: 'Neck-base is not marked at top.',
    });
    expect(scale?.u).toBeGreaterThan(0);
    for (const { u, uStatistical } of measurements) expect(u).toBeGreaterThanOrEqual(uStatistical);
  });

  it('finds planted lengths where the camera stands as assumed', () => {
    const measured = measure(plantedMarks({ hipToTop: -80, headToTop: -50 }), plantedPicture, setting);
    // Tolerance 3 mm: the default lens, depths and club are the planted ones, to rounding.
    expect(Math.abs(lengthOf(measured, 'hip-shift-address-top') + 80)).toBeLessThan(3);
    expect(Math.abs(lengthOf(measured, 'head-shift-address-top') + 50)).toBeLessThan(3);
    expect(Math.abs(lengthOf(measured, 'handle-ahead-of-ball') - 45)).toBeLessThan(3);
    expect(Math.abs(lengthOf(measured, 'head-behind-ball') - 60)).toBeLessThan(3);
    expect(Math.abs(lengthOf(measured, 'ankle-distance') - 430)).toBeLessThan(3);
    expect(Math.abs(lengthOf(measured, 'hip-past-ball-at-finish') - 130)).toBeLessThan(3);
  });

  it('keeps planted lengths within three of its doubts wherever a phone may stand', () => {
    const cameras = fc.record({
      distanceMm: fc.double({ min: 3000, max: 5000, noNaN: true }),
      lensHeightMm: fc.double({ min: 700, max: 1300, noNaN: true }),
      yawDeg: fc.double({ min: -8, max: 8, noNaN: true }),
    });
    fc.assert(
      fc.property(swings, cameras, (swing, camera) => {
        const planted = { ...soundSwing, ...swing };
        const truth: Record<string, number> = {
          'hip-shift-address-top': planted.hipToTop,
          'hip-shift-top-lead-arm-down': planted.hipFromTop,
          'handle-ahead-of-ball': planted.gripEndAddress,
          'hip-past-ball-at-finish': planted.hipFinish,
        };
        const { measurements } = measure(plantedMarks({ ...planted, ...camera }), plantedPicture, setting);
        for (const { key, value, u } of measurements) {
          const known = truth[key];
          if (known !== undefined) expect(Math.abs(value - known)).toBeLessThan(3 * u);
        }
      }),
      { numRuns: 40, seed: 11 },
    );
  });

  it('reads a left-hander, mirrored in the picture, exactly as a right-hander', () => {
    fc.assert(
      fc.property(swings, (swing) => {
        const right = measure(plantedMarks(swing), plantedPicture, setting);
        const left = measure(plantedMarks({ ...swing, hand: 'left' }), plantedPicture, {
          ...setting,
          hand: 'left',
        });
        for (const { key, value } of right.measurements) expect(lengthOf(left, key)).toBeCloseTo(value, 6);
      }),
      { numRuns: 25, seed: 12 },
    );
  });

  it('does not care how many pixels the picture has', () => {
    fc.assert(
      fc.property(swings, fc.double({ min: 0.4, max: 3, noNaN: true }), (swing, factor) => {
        const marks = plantedMarks(swing);
        const grown = marks.map((mark) => ({ ...mark, x: mark.x * factor, y: mark.y * factor }));
        const picture = {
          ...plantedPicture,
          widthPx: plantedPicture.widthPx * factor,
          heightPx: plantedPicture.heightPx * factor,
        };
        const small = measure(marks, plantedPicture, setting);
        const large = measure(grown, picture, setting);
        for (const { key, value } of small.measurements) expect(lengthOf(large, key)).toBeCloseTo(value, 5);
      }),
      { numRuns: 25, seed: 13 },
    );
  });

  it('measures everything that face-on shows when everything is marked', () => {
    const { measurements, refusals } = measure(plantedFully(), plantedPicture, setting);
    // The lowest point of the arc is read from a trail, not from marks.
    const refused = refusals.filter(({ why }) => why !== 'wrong-view').map(({ key }) => key);
    expect(refused).toEqual(['low-point-ahead-of-ball']);
    const value = (key: string) => measurements.find((one) => one.key === key)?.value ?? Number.NaN;
    // The heels stand 105 and -305 mm from the ball; tolerance 3 mm for lens and club.
    expect(Math.abs(value('stance-width') - 410)).toBeLessThan(3);
    expect(Math.abs(value('neck-base-shift-address-impact') - 20)).toBeLessThan(3);
    expect(Math.abs(value('trail-heel-lift-at-impact') - 50)).toBeLessThan(3);
    // Positions 0, 3 and 6 of nine frames: even times.
    expect(value('tempo-ratio')).toBeCloseTo(1, 9);
    // Closed form: atan2(820, -50) - atan2(5, 260) = 92.4 degrees in the picture, and 16 that a picture does not show.
    expect(value('forearm-shaft-angle-at-lead-arm-down')).toBeCloseTo(108.4, 0);
  });

  it('refuses moments that stand on frames in the wrong order, by name', () => {
    const marks = plantedMarks().map((mark) => (mark.position === 'top' ? { ...mark, frame: 0 } : mark));
    const late = marks.map((mark) => (mark.position === 'address' ? { ...mark, frame: 2 } : mark));
    expect(measure(late, plantedPicture, setting).refusals).toContainEqual({
      key: 'hip-shift-address-top',
      why: 'moments-out-of-order',
      words: 'Top is marked on an earlier frame than address.',
    });
  });

  it('refuses a mark outside the picture or the clip with a code', () => {
    const [first, ...rest] = plantedMarks();
    if (first === undefined) throw new Error('no marks');
    const outside = (change: Partial<Mark>) => () =>
      measure([...rest, { ...first, ...change }], plantedPicture, setting);
    expect(outside({ x: 1081 })).toThrow(RangeError);
    expect(outside({ x: 1081 })).toThrow(expect.objectContaining({ code: 'mark-outside-frame' }));
    expect(outside({ y: -1 })).toThrow(/outside the picture/);
    expect(outside({ frame: 9 })).toThrow(expect.objectContaining({ code: 'frame-outside-clip' }));
    expect(outside({ frame: 1.5 })).toThrow(/frame/);
    expect(outside({ x: Number.NaN })).toThrow(expect.objectContaining({ code: 'mark-not-a-number' }));
  });

  it('refuses millimetres without the club at address, but not shares of the stance', () => {
    const marks = plantedMarks().filter(
      ({ point, position }) => point !== 'grip-end' || position !== 'address',
    );
    const measured = measure(marks, plantedPicture, setting);
    expect(measured.scale).toBeNull();
    expect(measured.refusals).toContainEqual({
      key: 'hip-shift-address-top',
      why: 'no-scale',
      words: 'No scale yet: mark ball and grip end at address, or a stick on the target line.',
    });
    // Truth -10 of 430 mm; the lens is only guessed, so 0.3 points are allowed.
    expect(lengthOf(measured, 'hip-shift-address-top-percent')).toBeCloseTo(-2.3, 0);
  });

  it('refuses what the view, the swing length or the doubt forbids', () => {
    const why = (measured: Measured, key: string) =>
      measured.refusals.find((refusal) => refusal.key === key)?.why;
    const behind = measure(plantedMarks(), plantedPicture, { ...setting, view: 'down-the-line' });
    expect(why(behind, 'hip-shift-address-top')).toBe('wrong-view');
    expect(why(behind, 'seat-toward-ball-address-impact')).toBe('marks-missing');
    const faceOn = measure(plantedMarks(), plantedPicture, setting);
    expect(why(faceOn, 'seat-toward-ball-address-impact')).toBe('wrong-view');
    const short = measure(plantedMarks(), plantedPicture, { ...setting, swingLength: 'hip-high' });
    expect(why(short, 'hip-shift-address-top')).toBe('not-for-this-length');
    expect(lengthOf(short, 'ankle-distance')).toBeGreaterThan(0);
    const wrongHand = measure(plantedMarks(), plantedPicture, { ...setting, hand: 'left' });
    expect(why(wrongHand, 'hip-middle-along-ankles')).toBe('doubt-too-large');
  });

  it('doubts a suggested point more than a clicked one', () => {
    const suggested = plantedMarks().map((mark) => ({ ...mark, source: 'suggested' as const }));
    const key = 'hip-shift-address-top';
    const u = (marks: readonly Mark[]) =>
      measure(marks, plantedPicture, setting).measurements.find((one) => one.key === key)?.u ?? 0;
    expect(u(suggested)).toBeGreaterThan(u(plantedMarks()));
  });
});
