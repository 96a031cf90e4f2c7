import { normalCdf } from '@ballfirst/numbers/normal-cdf';
import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { checkable } from './coverage.ts';
import type { SeenSwing } from './seen-swing.ts';

/** One of ten bins of P(past the edge): what was said, and how often it was so. */
export type Bin = { readonly said: number; readonly was: number; readonly n: number };

/** Edges lie within so many doubts of the true value. */
const within = 3;

/**
 * Calibration of the one-sided chance that the true value lies past an edge, in ten bins. The edges are laid by chance
 * around the true values: those of the bands would test how sound the golfers are, which a chance from marks cannot know.
 */
export function calibrationOf(swings: readonly SeenSwing[], seed: number): readonly Bin[] {
  const random = seededRandom(seed);
  const bins = Array.from({ length: 10 }, () => ({ said: 0, was: 0, n: 0 }));
  for (const { reading, real } of checkable(swings)) {
    const edge = real + within * reading.u * (2 * random() - 1);
    const chance = normalCdf((edge - reading.value) / reading.u);
    const bin = bins[Math.min(9, Math.floor(10 * chance))];
    if (bin === undefined) continue;
    bin.said += chance;
    bin.was += real < edge ? 1 : 0;
    bin.n += 1;
  }
  return bins.filter(({ n }) => n > 0).map(({ said, was, n }) => ({ said: said / n, was: was / n, n }));
}
