import { partialPooling } from '@ballfirst/numbers/partial-pooling';
import { pooledMean } from '@ballfirst/numbers/pooled-mean';
import { minimalChange, reliability } from '@ballfirst/numbers/reliability';
import { describe, expect, it } from 'vitest';
import { effects, standardErrors } from './data/eight-schools.ts';
import { ratings } from './data/ratings.ts';

describe('reliability', () => {
  const found = reliability(ratings);
  // Source: Shrout & Fleiss 1979, tables 2 to 4 (two places); five places recomputed.
  it.each([
    ['icc11', 0.17, 0.16574],
    ['icc21', 0.29, 0.28976],
    ['icc31', 0.71, 0.71484],
    ['icc1k', 0.44, 0.4428],
    ['icc2k', 0.62, 0.62005],
    ['icc3k', 0.91, 0.90932],
  ] as const)('%s', (name, published, recomputed) => {
    expect(Number(found[name].toFixed(2))).toBe(published);
    expect(found[name]).toBeCloseTo(recomputed, 4);
  });

  it('mean squares, standard errors and the smallest change', () => {
    const { rows, within, columns, error } = found.meanSquare;
    expect([rows, within, columns, error].map((value) => Number(value.toFixed(4)))).toEqual([
      11.2417, 6.2639, 32.4861, 1.0194,
    ]);
    expect(found.semConsistency).toBeCloseTo(1.00968, 5);
    expect(found.semAgreement).toBeCloseTo(2.50278, 5);
    expect(minimalChange(found.semConsistency)).toBeCloseTo(2.7987, 3);
    // Common rule 1.96 sqrt(2) SEM: 2 degrees make 5.5.
    expect(minimalChange(2)).toBeCloseTo(5.54, 2);
  });

  it('refuses ragged tables and ratings that are all the same', () => {
    expect(() => reliability([[1, 2], [1]])).toThrow(/Target 2/);
    expect(() =>
      reliability([
        [3, 3],
        [3, 3],
      ]),
    ).toThrow(/same/);
  });
});

describe('eight schools', () => {
  it('as one: mean, standard error and Q', () => {
    const { mean, se, q } = pooledMean(effects, standardErrors);
    expect(mean).toBeCloseTo(7.6856, 4);
    expect(se).toBeCloseTo(4.0719, 4);
    expect(q).toBeCloseTo(4.707, 3);
  });

  // Source: computed independently of this project with a uniform prior on tau (Rubin 1981; Gelman et al., section 5.5).
  it.each([11.4, 7.89, 6.13, 7.64, 5.13, 6.14, 10.66, 8.46].map((mean, i) => [i + 1, mean] as const))(
    'school %d is drawn to %d',
    (school, mean) => {
      const { groups } = partialPooling(effects, standardErrors);
      expect(Math.abs((groups[school - 1]?.mean ?? 0) - mean)).toBeLessThan(0.011);
    },
  );

  it('draws nothing where groups are known, and all where they agree', () => {
    const sure = partialPooling([0, 100, 200], [0.01, 0.01, 0.01]);
    expect(sure.groups[2]?.mean).toBeCloseTo(200, 2);
    const alike = partialPooling([5, 5, 5, 5, 5, 5, 5, 5], [3, 3, 3, 3, 3, 3, 3, 3]);
    expect(alike.mean).toBeCloseTo(5, 9);
    expect(() => partialPooling([1, 2, 3], [1, 0, 1])).toThrow(/Standard error 2/);
    expect(() => partialPooling([1, 2], [1, 1])).toThrow(RangeError);
  });
});
