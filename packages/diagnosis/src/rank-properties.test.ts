import { causes } from '@ballfirst/library/causes';
import { faults } from '@ballfirst/library/types';
import { measurementKeys, measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import type { Measurement, Reading } from '@ballfirst/swing/measurement';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ObservationAnswer } from './evidence.ts';
import { firstCause } from './first-cause.ts';
import { rank } from './rank.ts';
import { readAll } from './read-all.ts';

const setting = { club: '8-iron', swingLength: 'full', view: 'face-on' } as const;
const measurement = (key: string, value: number, u: number): Measurement => ({
  key,
  unit: measurementKeys.includes(key as never)
    ? measurementNames[key as keyof typeof measurementNames].unit
    : 'mm',
  value,
  u,
  uStatistical: u,
  proxy: false,
  positions: [],
});
const readings = (values: readonly (readonly [string, number, number])[]): readonly Reading[] =>
  readAll(
    values.map(([key, value, u]) => measurement(key, value, u)),
    setting,
  );

const keys = [...new Set(causes.flatMap(({ signs }) => signs.map(({ key }) => key)))];
const taps = [
  ...new Set(
    causes.flatMap(({ signs }) => signs.filter(({ kind }) => kind === 'observed').map(({ key }) => key)),
  ),
];
const value = fc.tuple(
  fc.constantFrom(...keys),
  fc.double({ min: -400, max: 400, noNaN: true }),
  fc.double({ min: 0.1, max: 200, noNaN: true }),
);
const values = fc.uniqueArray(value, { maxLength: 20, selector: ([key]) => key });
const answers: fc.Arbitrary<ObservationAnswer[]> = fc.uniqueArray(
  fc.record({
    key: fc.constantFrom(...taps),
    answer: fc.constantFrom('yes' as const, 'no' as const, 'cannot-tell' as const),
  }),
  { maxLength: 8, selector: ({ key }) => key },
);
const fault = fc.constantFrom(...faults);
const chances = (ranked: ReturnType<typeof rank>) =>
  new Map(ranked.map(({ causeId, probability }) => [causeId, probability]));

describe('a ranking, whatever was read', () => {
  it('keeps every probability and share within 0 and 1, and loses no cause', () => {
    fc.assert(
      fc.property(fault, values, answers, (miss, read, seen) => {
        const ranked = rank({ fault: miss, readings: readings(read), observations: seen, causes });
        const bringing = causes.filter(({ brings }) => brings[miss] !== undefined);
        expect(new Set(ranked.map(({ causeId }) => causeId)).size).toBe(bringing.length);
        for (const { probability, share, score } of ranked) {
          for (const part of [probability, share, score]) {
            expect(part).toBeGreaterThanOrEqual(0);
            expect(part).toBeLessThanOrEqual(1);
          }
          expect(score).toBeLessThanOrEqual(share + 1e-12);
        }
      }),
      { numRuns: 100, seed: 61 },
    );
  });

  it('leaves the prior as it was when the doubt is without bounds', () => {
    fc.assert(
      fc.property(fault, values, (miss, read) => {
        const vague = readings(read.map(([key, at]) => [key, at, 1e7] as const));
        const prior = chances(rank({ fault: miss, readings: [], observations: [], causes }));
        for (const { causeId, probability } of rank({
          fault: miss,
          readings: vague,
          observations: [],
          causes,
        })) {
          expect(probability).toBeCloseTo(prior.get(causeId) ?? 0, 4);
        }
      }),
      { numRuns: 50, seed: 62 },
    );
  });

  it('does not depend on the order of readings, observations or causes', () => {
    fc.assert(
      fc.property(fault, values, answers, (miss, read, seen) => {
        const one = rank({ fault: miss, readings: readings(read), observations: seen, causes });
        const other = rank({
          fault: miss,
          readings: readings(read.toReversed()),
          observations: seen.toReversed(),
          causes: causes.toReversed(),
        });
        const there = chances(other);
        for (const { causeId, probability } of one) expect(there.get(causeId)).toBeCloseTo(probability, 9);
        expect(firstCause(other)?.causeId).toBe(firstCause(one)?.causeId);
      }),
      { numRuns: 100, seed: 63 },
    );
  });

  it('comes out the same from what was stored', () => {
    fc.assert(
      fc.property(fault, values, answers, (miss, read, seen) => {
        const input = { fault: miss, readings: readings(read), observations: seen };
        const stored = JSON.parse(JSON.stringify(input)) as typeof input;
        expect(rank({ ...stored, causes })).toEqual(rank({ ...input, causes }));
      }),
      { numRuns: 50, seed: 64 },
    );
  });

  it('never lowers hang-back when the hips stay further back', () => {
    const key = fc.constantFrom(
      'hip-shift-top-lead-arm-down',
      'hip-shift-top-lead-arm-down-percent',
      'hip-past-ball-at-finish',
      'hip-over-lead-ankle-at-finish',
    );
    const back = fc.double({ min: 0, max: 150, noNaN: true });
    fc.assert(
      fc.property(
        key,
        values,
        fc.double({ min: -150, max: 150, noNaN: true }),
        back,
        (moved, rest, at, further) => {
          const others = rest.filter(([other]) => other !== moved);
          const chance = (reading: number) =>
            chances(
              rank({
                fault: 'fat',
                readings: readings([...others, [moved, reading, 20]]),
                observations: [],
                causes,
              }),
            ).get('hang-back') ?? 0;
          expect(chance(at - further)).toBeGreaterThanOrEqual(chance(at) - 1e-12);
        },
      ),
      { numRuns: 100, seed: 65 },
    );
  });

  it('puts no measured set-up before a clear sway whose own signs say more', () => {
    const setUps = fc.record({
      'hip-middle-along-ankles': fc.double({ min: 38, max: 60, noNaN: true }),
      'handle-ahead-of-hip-middle': fc.double({ min: -60, max: 120, noNaN: true }),
      'handle-ahead-of-lead-thigh': fc.double({ min: -120, max: 40, noNaN: true }),
    });
    const sway = [
      ['hip-shift-address-top', -90, 15],
      ['hip-shift-address-top-percent', -22, 4],
    ] as const;
    fc.assert(
      fc.property(setUps, (setUp) => {
        const ranked = rank({
          fault: 'fat',
          readings: readings([...sway, ...Object.entries(setUp).map(([key, at]) => [key, at, 12] as const)]),
          observations: [],
          causes,
        });
        const place = (id: string) => ranked.findIndex(({ causeId }) => causeId === id);
        const swayed = ranked[place('sway-away')];
        for (const id of ['handle-back', 'hips-back-at-address']) {
          const other = ranked[place(id)];
          if (swayed === undefined || other === undefined) throw new Error('not ranked');
          if (other.share * other.probability < swayed.share * swayed.probability) {
            expect(place('sway-away')).toBeLessThan(place(id));
          }
        }
      }),
      { numRuns: 100, seed: 66 },
    );
  });
});

describe('nothing stands out', () => {
  it('where nothing was read, for any miss', () => {
    for (const miss of faults) {
      expect(firstCause(rank({ fault: miss, readings: [], observations: [], causes }))).toBeNull();
    }
    expect(firstCause([])).toBeNull();
  });

  it('by a ratio of times alone, however odd', () => {
    const ranked = rank({
      fault: 'fat',
      readings: readings([['tempo-ratio', 6, 0.1]]),
      observations: [],
      causes,
    });
    expect(firstCause(ranked)).toBeNull();
    expect(ranked.find(({ causeId }) => causeId === 'rushed')?.logRatio).toBeLessThanOrEqual(
      Math.log(2) + 1e-12,
    );
  });

  it('until a cause has been seen well', () => {
    const seen = readings([
      ['hip-shift-address-top', -110, 12],
      ['hip-shift-address-top-percent', -27, 3],
    ]);
    expect(firstCause(rank({ fault: 'fat', readings: seen, observations: [], causes }))?.causeId).toBe(
      'sway-away',
    );
  });
});

describe('a set of balls that never repeats', () => {
  it('is ranked like a miss', () => {
    const scatter = rank({ fault: 'low-point-scatter', readings: [], observations: [], causes });
    expect(scatter.map(({ causeId }) => causeId).sort()).toEqual([
      'hang-back',
      'radius-change',
      'rushed',
      'sway-away',
    ]);
    expect(rank({ fault: 'face-scatter', readings: [], observations: [], causes }).length).toBeGreaterThan(4);
  });
});
