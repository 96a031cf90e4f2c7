import type { Evidence } from './evidence.ts';

/** Correlation between signs read from the same marks. Common practice, no source. */
const sharedCorrelation = 0.7;

/** k signs of equal weight count as k / (1 + (k - 1) r); one without weight neither counts nor dilutes. */
const sharedRatio = (signs: readonly Evidence[]): number => {
  const heaviest = Math.max(...signs.map(({ weight }) => weight));
  if (heaviest === 0) return 0;
  const count = signs.reduce((sum, { weight }) => sum + weight / heaviest, 0);
  const ratio = signs.reduce((sum, { logRatio }) => sum + logRatio, 0);
  return ratio / (1 + (count - 1) * sharedCorrelation);
};

/**
 * Log likelihood ratio of all signs of one cause. Signs that share marks err together, so they are not counted as if each
 * were news: their sum is divided by 1 + (k - 1) r, k counted by how much each can say at its doubt.
 *
 * @param evidence - the signs that were read or seen
 * @returns natural logarithm; 0 when there is none
 * @source likelihood ratio of equally correlated normal readings, sum / (1 + (k - 1) r) (Kish 1965, design effect)
 */
export function combineSigns(evidence: readonly Evidence[]): number {
  const groups = new Map<string, Evidence[]>();
  evidence.forEach((one, i) => {
    const name = one.sign.shares ?? `alone ${i}`;
    groups.set(name, [...(groups.get(name) ?? []), one]);
  });
  let total = 0;
  for (const signs of groups.values()) total += sharedRatio(signs);
  return total;
}
