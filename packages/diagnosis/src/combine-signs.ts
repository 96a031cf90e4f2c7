import type { Evidence } from './evidence.ts';

/** Correlation between signs read from the same marks. Common practice, no source. */
const sharedCorrelation = 0.7;

/**
 * Log likelihood ratio of all signs of one cause: k signs that share marks count as sum / (1 + (k - 1) r).
 *
 * @param evidence - the signs that were read or seen
 * @returns natural logarithm; 0 when there is none
 * @source variance of a sum of k equally correlated readings, used as an effective number of signs (derived)
 */
export function combineSigns(evidence: readonly Evidence[]): number {
  const groups = new Map<string, number[]>();
  evidence.forEach(({ sign, logRatio }, i) => {
    const name = sign.shares ?? `alone ${i}`;
    groups.set(name, [...(groups.get(name) ?? []), logRatio]);
  });
  let total = 0;
  for (const ratios of groups.values()) {
    const sum = ratios.reduce((a, b) => a + b, 0);
    total += sum / (1 + (ratios.length - 1) * sharedCorrelation);
  }
  return total;
}
