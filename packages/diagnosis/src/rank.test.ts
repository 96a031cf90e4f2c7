import { causes } from '@ballfirst/library/causes';
import { fatFirstPass } from '@ballfirst/swing/marks/first-pass';
import type { Setting } from '@ballfirst/swing/marks/marks';
import { type PlantedSwing, plantedMarks, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { measure } from '@ballfirst/swing/measure';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ObservationAnswer } from './evidence.ts';
import { nextMark } from './next-mark.ts';
import { rank } from './rank.ts';
import { readAll } from './read-all.ts';

const setting: Setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' };
const readingsOf = (changes: Partial<PlantedSwing>) => {
  const hand = changes.hand ?? 'right';
  const { measurements } = measure(plantedMarks(changes), plantedPicture, { ...setting, hand });
  return readAll(measurements, setting);
};
const rankFat = (changes: Partial<PlantedSwing>) =>
  rank({ fault: 'fat', readings: readingsOf(changes), observations: [], causes });

// Departures well past the edges of common practice, in mm.
const planted: Readonly<Record<string, Partial<PlantedSwing>>> = {
  'handle-back': { gripEndAddress: -90 },
  'hips-back-at-address': { hipAddress: -165, headAddress: -175 },
  'sway-away': { hipToTop: -95, headToTop: -85 },
  'hang-back': { hipFromTop: -5, headFromTop: -25, hipFinish: -60 },
  'thrown-early': { gripEndShaftParallelDown: -230 },
};

describe('rank', () => {
  for (const [cause, changes] of Object.entries(planted)) {
    for (const hand of ['right', 'left'] as const) {
      it(`puts a planted ${cause} first for a ${hand}-hander`, () => {
        const [first] = rankFat({ ...changes, hand });
        expect(first?.causeId).toBe(cause);
        expect(first?.probability).toBeGreaterThan(0.6);
      });
    }
  }

  it('keeps a planted cause first, or second, wherever the camera stands within its usual place', () => {
    const camera = fc.record({
      distanceMm: fc.double({ min: 3300, max: 4700, noNaN: true }),
      lensHeightMm: fc.double({ min: 800, max: 1200, noNaN: true }),
      yawDeg: fc.double({ min: -4, max: 4, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(planted)), camera, (cause, place) => {
        const two = rankFat({ ...planted[cause], ...place }).slice(0, 2);
        expect(two.map(({ causeId }) => causeId)).toContain(cause);
      }),
      { numRuns: 60, seed: 21 },
    );
  });

  it('says why in words, the weightiest sign first', () => {
    const [first] = rankFat(planted['sway-away'] ?? {});
    expect(first?.factors.map(({ sentence }) => sentence)).toContainEqual(
      expect.stringMatching(/^(strong )?sign: hips \d+ ± \d+ mm away from the target at the top$/),
    );
    const weights = first?.factors.map(({ logRatio }) => Math.abs(logRatio)) ?? [];
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
  });

  it('lets an observation speak for its cause, and a cannot-tell say nothing', () => {
    const key = 'clubhead-in-line-early';
    const chance = (answer?: ObservationAnswer['answer']) =>
      rank({
        fault: 'fat',
        readings: [],
        observations: answer === undefined ? [] : [{ key, answer }],
        causes,
      }).find(({ causeId }) => causeId === 'thrown-early')?.probability ?? 0;
    expect(chance('yes')).toBeGreaterThan(chance());
    expect(chance('no')).toBeLessThan(chance());
    expect(chance('cannot-tell')).toBe(chance());
  });

  it('finds no cause likely in a sound swing', () => {
    for (const { probability } of rankFat({})) expect(probability).toBeLessThan(0.6);
  });

  it('does not let a set-up tick outrank a clear sway through trainability alone', () => {
    expect(rankFat({ hipToTop: -95, headToTop: -85, gripEndAddress: -15 })[0]?.causeId).toBe('sway-away');
  });

  it('uses an academy’s own base rates', () => {
    const input = { fault: 'fat', readings: [], observations: [], causes } as const;
    const chance = (baseRates: Record<string, number>) =>
      rank({ ...input, baseRates }).find(({ causeId }) => causeId === 'dip')?.probability ?? 0;
    expect(chance({ dip: 0.9 })).toBeGreaterThan(chance({ dip: 0.1 }));
  });

  it('ranks only what brings the fault about', () => {
    const slice = rank({ fault: 'slice', readings: [], observations: [], causes });
    const brings = causes.filter((cause) => cause.brings.slice !== undefined).map(({ id }) => id);
    expect(slice.map(({ causeId }) => causeId).sort()).toEqual([...brings].sort());
  });
});

describe('the next mark', () => {
  const base = { fault: 'fat', observations: [], causes, view: 'face-on' } as const;

  it('asks for something while nothing is known', () => {
    const next = nextMark({ ...base, readings: [], marked: [] });
    expect(next?.gain).toBeGreaterThan(0);
  });

  it('says enough once a clear cause cannot be overtaken', () => {
    const readings = readingsOf({ hipToTop: -150, headToTop: -130 });
    expect(nextMark({ ...base, readings, marked: fatFirstPass })).toBeNull();
  });

  it('never asks for what is known', () => {
    const readings = readingsOf({});
    const next = nextMark({ ...base, readings, marked: fatFirstPass });
    const asked = next === null ? '' : `${next.position}/${next.point}`;
    expect(fatFirstPass.map(({ position, point }) => `${position}/${point}`)).not.toContain(asked);
  });
});
