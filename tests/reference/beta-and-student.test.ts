import { betaCdf } from '@ballfirst/numbers/beta-cdf';
import { jeffreysInterval } from '@ballfirst/numbers/jeffreys-interval';
import { logGamma } from '@ballfirst/numbers/log-gamma';
import { studentCdf } from '@ballfirst/numbers/student-cdf';
import { studentQuantile } from '@ballfirst/numbers/student-quantile';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('gamma and Beta', () => {
  // Source: closed forms: (n-1)!, sqrt(pi), and Beta functions that are polynomials or arcs.
  it('agree with closed forms', () => {
    expect(logGamma(11)).toBeCloseTo(Math.log(3_628_800), 12);
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
    expect(betaCdf(0.5, 2, 3)).toBeCloseTo(11 / 16, 12);
    for (const x of [0.001, 0.2, 0.5, 0.93]) {
      expect(betaCdf(x, 0.5, 0.5)).toBeCloseTo((2 / Math.PI) * Math.asin(Math.sqrt(x)), 12);
      const arc = (2 / Math.PI) * (Math.asin(Math.sqrt(x)) + Math.sqrt(x * (1 - x)));
      expect(betaCdf(x, 0.5, 1.5)).toBeCloseTo(arc, 12);
    }
  });

  it('Beta is a sum of binomial chances where its weights are whole', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 }), share, (a, b, x) => {
        const n = a + b - 1;
        let sum = 0;
        for (let k = a; k <= n; k += 1) {
          const ways = Math.exp(logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1));
          sum += ways * x ** k * (1 - x) ** (n - k);
        }
        expect(betaCdf(x, a, b)).toBeCloseTo(sum, 10);
      }),
      { seed: 34 },
    );
  });
});

describe('Jeffreys interval', () => {
  // Source: Brown, Cai & DasGupta 2001, section 3.1.3 (definition); one of one has the closed form above.
  it('cuts equal tails of Beta(x + 1/2, n - x + 1/2)', () => {
    const { low, high } = jeffreysInterval(8, 10);
    expect(betaCdf(low, 8.5, 2.5)).toBeCloseTo(0.025, 10);
    expect(betaCdf(high, 8.5, 2.5)).toBeCloseTo(0.975, 10);
    const none = jeffreysInterval(0, 1);
    expect(none.low).toBe(0);
    const x = none.high;
    expect((2 / Math.PI) * (Math.asin(Math.sqrt(x)) + Math.sqrt(x * (1 - x)))).toBeCloseTo(0.975, 10);
    expect(jeffreysInterval(10, 10).high).toBe(1);
  });

  it('turns round with the share and refuses what is none', () => {
    const counted = fc
      .integer({ min: 1, max: 80 })
      .chain((n) => fc.record({ n: fc.constant(n), x: fc.nat(n) }));
    fc.assert(
      fc.property(counted, ({ n, x }) => {
        expect(jeffreysInterval(x, n).low).toBeCloseTo(1 - jeffreysInterval(n - x, n).high, 9);
      }),
      { seed: 35 },
    );
    expect(() => jeffreysInterval(11, 10)).toThrow(RangeError);
    expect(() => jeffreysInterval(1, 10, 1)).toThrow(RangeError);
  });
});

describe('Student', () => {
  // Source: printed tables of t, 95 % and 99 % two-sided, three places.
  it.each([
    [0.975, 1, 12.706],
    [0.975, 4, 2.776],
    [0.975, 8, 2.306],
    [0.975, 30, 2.042],
    [0.995, 16, 2.921],
    [0.95, 10, 1.812],
  ])('quantile %d with %d degrees', (p, degrees, t) => {
    expect(studentQuantile(p, degrees)).toBeCloseTo(t, 3);
    expect(studentCdf(studentQuantile(p, degrees), degrees)).toBeCloseTo(p, 9);
  });
});
