import { causes } from '@ballfirst/library/causes';
import type { Cause, Sign } from '@ballfirst/library/types';
import { choleskyOf, solveCholesky } from '@ballfirst/numbers/cholesky';
import { gradedSignLogRatio } from '@ballfirst/numbers/graded-sign';
import type { Reading } from '@ballfirst/swing/measurement';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorCovariance } from './error-covariance.ts';
import { known } from './evidence.ts';
import { joinClips } from './join-clips.ts';
import { jointSigns } from './joint-signs.ts';
import { loudness } from './loudness.ts';
import { rank } from './rank.ts';
import { shownBy } from './shown.ts';

type Felt = NonNullable<Reading['felt']>;
const reading = (key: string, value: number, u: number, felt?: Felt): Reading => ({
  ...{ key, unit: 'mm', value, u, uStatistical: u, proxy: false, positions: [] },
  ...{ band: { low: -50, high: 50, label: 'common practice' }, probabilityBelow: 0, probabilityAbove: 0 },
  ...(felt === undefined ? {} : { felt }),
});
const above = (key: string, more: Partial<Sign> = {}): Sign => ({
  ...{ kind: 'measured', key, view: 'face-on', edge: 0, direction: 'above', sd: 20 },
  ...{ sensitivity: 0.8, specificity: 0.9, source: 'common practice, no source' },
  ...more,
});
const [any] = causes;
if (any === undefined) throw new Error('The library is empty.');
const causeWith = (id: string, signs: readonly Sign[]): Cause => ({ ...any, id, signs });
const linesOf = (cause: Cause, readings: readonly Reading[], others: readonly Cause[] = []) => {
  const seen = known(readings, []);
  return jointSigns(cause, shownBy([cause, ...others], seen)).map(({ logRatio }) => logRatio);
};
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('one sign alone', () => {
  // Source: worked by hand and computed independently of this project; s 20, sensitivity .8, specificity .9; 55.0 is clipped to 20.
  it.each([
    [41, 9, 20],
    [12, 9, 4.254],
    [5, 9, 2.293],
    [0, 9, 1.4746],
    [41, 60, 1.619],
  ])('%d mm past its edge with a doubt of %d mm says %d to one', (past, u, ratio) => {
    const cause = causeWith('one', [above('a')]);
    expect(Math.exp(sum(linesOf(cause, [reading('a', past, u)]))) / ratio).toBeCloseTo(1, 2);
  });

  it('says never more against its cause than a seen “no”, (1 - sensitivity) / specificity', () => {
    const inside = (value: number) => sum(linesOf(causeWith('one', [above('a')]), [reading('a', value, 9)]));
    expect(Math.exp(inside(-400))).toBeCloseTo(0.2 / 0.9, 9);
    expect(inside(-20)).toBeGreaterThan(inside(-400));
  });

  it('is the graded sign between the two limits', () => {
    const value = fc.double({ min: -30, max: 30, noNaN: true });
    const doubt = fc.double({ min: 0.1, max: 80, noNaN: true });
    fc.assert(
      fc.property(value, doubt, (past, u) => {
        const asked = { past, u, sd: 20, sensitivity: 0.8, specificity: 0.9 };
        const alone = Math.min(Math.log(20), Math.max(Math.log(0.2 / 0.9), gradedSignLogRatio(asked)));
        expect(sum(linesOf(causeWith('one', [above('a')]), [reading('a', past, u)]))).toBeCloseTo(alone, 9);
      }),
      { numRuns: 60, seed: 81 },
    );
  });
});

describe('several signs', () => {
  const shared = (effects: readonly number[]): Felt => ({ sources: effects.map((_, i) => i), effects });

  it('are one ratio of normal densities, with the covariance written out', () => {
    const felt = [shared([12, 5, 0]), shared([12, 0, 7])];
    const us = felt.map(({ effects }) => Math.hypot(...effects));
    const value = fc.double({ min: -15, max: 25, noNaN: true });
    fc.assert(
      fc.property(value, value, (a, b) => {
        const given = [reading('a', a, us[0] ?? 0, felt[0]), reading('b', b, us[1] ?? 0, felt[1])];
        const signs = [above('a'), above('b', { sensitivity: 0.7 })];
        const middle = -1.2815515655446004 * 20;
        const shifts = [0.8416212335729143 * 20 - middle, 0.5244005127080407 * 20 - middle];
        const covariance = Float64Array.of(400 + 169, 144, 144, 400 + 193);
        const apart = Float64Array.of(a - middle - (shifts[0] ?? 0) / 2, b - middle - (shifts[1] ?? 0) / 2);
        const heard = solveCholesky(choleskyOf(covariance, 2), apart);
        const ratio = sum(shifts.map((shift, i) => shift * (heard[i] ?? 0)));
        expect(sum(linesOf(causeWith('two', signs), given))).toBeCloseTo(ratio, 8);
      }),
      { numRuns: 60, seed: 82 },
    );
  });

  it('that are one reading twice say hardly more than one', () => {
    const felt = shared([30]);
    const twice = [above('a', { shares: 'x' }), above('b', { shares: 'x' })];
    const one = sum(linesOf(causeWith('one', [above('a')]), [reading('a', 25, 30, felt)]));
    const both = sum(
      linesOf(causeWith('two', twice), [reading('a', 25, 30, felt), reading('b', 25, 30, felt)]),
    );
    expect(both).toBeGreaterThan(one);
    expect(both).toBeLessThan(1.2 * one);
  });

  it('are freed of an error that another reading shows', () => {
    const turn = shared([40]);
    const cause = causeWith('one', [above('a')]);
    const other = causeWith('other', [above('b')]);
    const besides = (b: number) =>
      sum(linesOf(cause, [reading('a', 30, 40, turn), reading('b', b, 40, turn)], [other]));
    // Both stand out by as much: it is rather the camera that is turned.
    expect(besides(30)).toBeLessThan(besides(-25));
  });

  it('never say less for a cause when one of them shows it more', () => {
    const value = fc.double({ min: -100, max: 150, noNaN: true });
    const effects = fc.array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 3, maxLength: 3 });
    const three = fc.tuple(value, value, value);
    fc.assert(
      fc.property(
        three,
        fc.tuple(effects, effects, effects),
        fc.integer({ min: 0, max: 2 }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (values, all, place, more) => {
          const signs = ['a', 'b', 'c'].map((key, i) =>
            above(key, { shares: 'x', sensitivity: 0.6 + 0.1 * i }),
          );
          const at = (changed: number) =>
            sum(
              linesOf(
                causeWith('three', signs),
                values.map((one, i) => {
                  const felt = shared(all[i] ?? []);
                  const u = Math.hypot(...felt.effects);
                  return reading('abc'[i] ?? '', i === place ? one + changed : one, u, felt);
                }),
              ),
            );
          expect(at(more)).toBeGreaterThanOrEqual(at(0) - 1e-9);
        },
      ),
      { numRuns: 100, seed: 83 },
    );
  });
});

describe('a ranking', () => {
  it('has lines that add up to what it says of each cause', () => {
    const given = [
      reading('hip-shift-address-top', -90, 25),
      reading('head-shift-address-top', -60, 15),
      reading('trail-heel-lift-at-impact', 2, 10),
    ];
    const observations = [{ key: 'trail-hip-outside-foot', answer: 'yes' }] as const;
    for (const { logRatio, factors } of rank({ fault: 'fat', readings: given, observations, causes }))
      expect(sum(factors.map((factor) => factor.logRatio))).toBeCloseTo(logRatio, 9);
  });

  it('calls signs that show the same as strong as they are together, and never one that says nothing', () => {
    const given = [
      reading('hip-shift-address-top', -100, 25),
      reading('hip-shift-address-top-percent', -25, 6),
      reading('head-shift-address-top', 20, 15),
    ];
    const ranked = rank({ fault: 'fat', readings: given, observations: [], causes });
    const factors = ranked.find(({ causeId }) => causeId === 'sway-away')?.factors ?? [];
    const words = new Map(factors.map(({ key, strength }) => [key, strength]));
    expect(words.get('hip-shift-address-top')).toBe(words.get('hip-shift-address-top-percent'));
    expect(words.get('head-shift-address-top')).toBe('speaks against it');
    const line = new Map(factors.map(({ key, logRatio }) => [key, logRatio]));
    expect(line.get('hip-shift-address-top')).toBeGreaterThan(0);
    expect(line.get('hip-shift-address-top-percent')).toBeGreaterThan(0);
  });

  it('names a reading that is no number', () => {
    const asked = (value: number, u: number) => () =>
      rank({
        fault: 'fat',
        readings: [reading('hip-shift-address-top', value, u)],
        observations: [],
        causes,
      });
    expect(asked(Number.NaN, 10)).toThrow(/The reading hip-shift-address-top is NaN/);
    expect(asked(Number.POSITIVE_INFINITY, 10)).toThrow(RangeError);
    expect(asked(10, Number.NaN)).toThrow(/The doubt of hip-shift-address-top is NaN/);
    expect(asked(10, -1)).toThrow(/The doubt of hip-shift-address-top is -1/);
  });

  it('goes by how loudly the signs speak in steps of twice as likely', () => {
    expect([0.4, 0.5, 1, 1.3, 2, 8, 1e9].map((ratio) => loudness(Math.log(ratio)))).toEqual([
      -1, -1, 0, 0, 1, 3, 9,
    ]);
    expect(loudness(1e-9)).toBe(0);
    expect(Math.abs(loudness(-1e-9))).toBe(0);
  });
});

describe('clips of one swinger', () => {
  it('share no error', () => {
    const felt: Felt = { sources: [0, 1], effects: [3, 4] };
    const clip = [reading('a', 1, 5, felt), reading('b', 2, 5, felt)];
    const joined = joinClips([clip, clip, [reading('c', 1, 1)]]);
    expect(joined.map((one) => one.felt?.sources)).toEqual([[0, 1], [0, 1], [2, 3], [2, 3], undefined]);
    expect([...errorCovariance(joined)].slice(0, 5)).toEqual([25, 25, 0, 0, 0]);
  });
});
