import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { propagate } from './propagate.ts';
import { propagateSources } from './propagate-sources.ts';

const number = fc.double({ min: -3, max: 3, noNaN: true });

describe('propagation by sources', () => {
  it('is propagation with the covariance that the shared sources make', () => {
    const inputs = fc.array(fc.array(number, { minLength: 4, maxLength: 4 }), { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(inputs, (rows) => {
        const f = ([a = 0, b = 0, c = 0]: readonly number[]) => a * b + Math.sin(c);
        const x = [1.2, -0.7, 0.4];
        const felt = rows.map((effects) => ({ sources: [0, 1, 2, 3], effects }));
        const covariance = rows.map((a) =>
          rows.map((b) => a.reduce((sum, effect, k) => sum + effect * (b[k] ?? 0), 0)),
        );
        expect(propagateSources(f, x, felt, 4).u).toBeCloseTo(propagate(f, x, covariance).u, 3);
      }),
      { seed: 71 },
    );
  });

  it('names what does not fit', () => {
    const one = { sources: [2], effects: [1] };
    expect(() => propagateSources(([a = 0]) => a, [1], [], 1)).toThrow('Each input needs its sources.');
    expect(() => propagateSources(([a = 0]) => a, [1], [one], 2)).toThrow('There is no source 2.');
    expect(() => propagateSources(() => Number.NaN, [1], [one], 3)).toThrow('not finite');
  });
});
