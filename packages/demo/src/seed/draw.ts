import { drawBeta } from '@ballfirst/numbers/draw-beta';
import { seededRandom } from '@ballfirst/numbers/seeded-random';

/** Chance with a name: the same words draw the same, whatever was drawn before. */
export type Draw = {
  /** Uniform, 0 <= x < 1. */
  next(): number;
  between(low: number, high: number): number;
  pick<T>(of: readonly T[]): T;
  beta(a: number, b: number): number;
  /** How many of `n` come out with probability `share`. */
  binomial(n: number, share: number): number;
};

/** FNV-1a, 32 bits (Fowler, Noll, Vo): a seed from words. */
const seedOf = (words: string): number => {
  let hash = 0x811c9dc5;
  for (const letter of words) {
    hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  }
  return hash >>> 0;
};

export const drawOf = (words: string): Draw => {
  const next = seededRandom(seedOf(words));
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    pick: <T>(of: readonly T[]): T => {
      const found = of[Math.floor(next() * of.length)];
      if (found === undefined) throw new RangeError('Nothing to pick from.');
      return found;
    },
    beta: (a, b) => drawBeta(next, a, b),
    binomial: (n, share) => {
      let hits = 0;
      for (let ball = 0; ball < n; ball += 1) if (next() < share) hits += 1;
      return hits;
    },
  };
};
