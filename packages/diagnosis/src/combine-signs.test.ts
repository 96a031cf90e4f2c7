import type { Sign } from '@ballfirst/library/types';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combineSigns } from './combine-signs.ts';
import type { Evidence } from './evidence.ts';

const evidence = (logRatio: number, shares?: string, weight = 1): Evidence => {
  const sign: Sign = {
    kind: 'observed',
    key: 'any',
    view: 'either',
    sensitivity: 0.8,
    specificity: 0.8,
    source: 'common practice, no source',
    ...(shares === undefined ? {} : { shares }),
  };
  return { sign, logRatio, weight, reading: null, answer: 'yes' };
};
const ratio = fc.double({ min: -3, max: 3, noNaN: true });

describe('combining signs', () => {
  it('adds independent signs and counts shared ones by their effective number', () => {
    expect(combineSigns([])).toBe(0);
    expect(combineSigns([evidence(1), evidence(2)])).toBeCloseTo(3, 12);
    // Two equal signs that share marks: 2 / (1 + 0.7).
    expect(combineSigns([evidence(1, 'hips'), evidence(1, 'hips')])).toBeCloseTo(2 / 1.7, 12);
  });

  it('grows with each of its signs', () => {
    fc.assert(
      fc.property(
        fc.array(ratio, { maxLength: 4 }),
        ratio,
        fc.double({ min: 0, max: 2, noNaN: true }),
        (others, one, more) => {
          const rest = others.map((other) => evidence(other, 'same'));
          const before = combineSigns([...rest, evidence(one, 'same')]);
          expect(combineSigns([...rest, evidence(one + more, 'same')])).toBeGreaterThanOrEqual(
            before - 1e-12,
          );
        },
      ),
      { seed: 41 },
    );
  });

  it('is left as it was by a sign whose doubt has taken all it could say', () => {
    const strong = evidence(2, 'same', 0.8);
    expect(combineSigns([strong, evidence(0, 'same', 0)])).toBeCloseTo(2, 12);
    expect(combineSigns([evidence(0, 'same', 0)])).toBe(0);
  });

  it('never counts shared signs as more than independent ones', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: 1, maxLength: 5 }),
        (ratios) => {
          const sum = ratios.reduce((a, b) => a + b, 0);
          expect(combineSigns(ratios.map((one) => evidence(one, 'same')))).toBeLessThanOrEqual(sum + 1e-12);
        },
      ),
      { seed: 42 },
    );
  });
});
