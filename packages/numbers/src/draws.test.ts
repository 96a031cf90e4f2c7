import { mean, variance } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { drawBeta } from './draw-beta.ts';
import { drawDirichlet } from './draw-dirichlet.ts';
import { drawGamma } from './draw-gamma.ts';
import { drawNormal } from './draw-normal.ts';
import { seededRandom } from './seeded-random.ts';

const draw = <T>(n: number, one: () => T): T[] => Array.from({ length: n }, one);

describe('seeded draws', () => {
  it('repeat with their seed and differ with another', () => {
    const numbers = (seed: number) => draw(5, seededRandom(seed));
    expect(numbers(4)).toEqual(numbers(4));
    expect(numbers(4)).not.toEqual(numbers(5));
    expect(() => seededRandom(0.5)).toThrow(RangeError);
  });

  // Moments by definition; tolerances are four standard errors of 20,000 draws.
  it('have the moments of their distributions', () => {
    const random = seededRandom(1);
    const uniform = draw(20_000, random);
    expect(Math.abs(mean(uniform) - 0.5)).toBeLessThan(0.0082);
    const normal = draw(20_000, () => drawNormal(random));
    expect(Math.abs(mean(normal))).toBeLessThan(0.0283);
    expect(Math.abs(variance(normal) - 1)).toBeLessThan(0.04);
    for (const shape of [0.5, 2.5, 9]) {
      const gamma = draw(20_000, () => drawGamma(random, shape));
      expect(Math.abs(mean(gamma) - shape)).toBeLessThan(4 * Math.sqrt(shape / 20_000));
    }
    const beta = draw(20_000, () => drawBeta(random, 6.5, 4.5));
    expect(Math.abs(mean(beta) - 6.5 / 11)).toBeLessThan(0.0041);
    expect(Math.abs(variance(beta) - (6.5 * 4.5) / (121 * 12))).toBeLessThan(0.001);
  });

  it('give shares that sum to one', () => {
    const random = seededRandom(2);
    for (const shares of draw(100, () => drawDirichlet(random, [0.5, 6.5, 3.5]))) {
      expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    }
    expect(() => drawDirichlet(random, [])).toThrow(RangeError);
    expect(() => drawGamma(random, 0)).toThrow(RangeError);
  });
});
