import type { Evidence } from './evidence.ts';

/** Correlation between signs that are seen on the same marks. Common practice, no source. */
const sharedCorrelation = 0.7;

const sumOf = (signs: readonly Evidence[]) => signs.reduce((sum, { logRatio }) => sum + logRatio, 0);

/**
 * By how much less signs count that share marks: k of equal weight count as k / (1 + (k - 1) r); one without weight neither
 * counts nor dilutes. Those that were measured are one already, weighed together by their errors.
 */
const countedAs = (signs: readonly Evidence[]): number => {
  const measured = signs.filter(({ reading }) => reading !== null).map(({ weight }) => weight);
  const tapped = signs.filter(({ reading }) => reading === null).map(({ weight }) => weight);
  const weights = measured.length > 0 ? [Math.max(...measured), ...tapped] : tapped;
  const heaviest = Math.max(...weights);
  if (heaviest === 0) return 0;
  const count = weights.reduce((sum, weight) => sum + weight / heaviest, 0);
  return 1 / (1 + (count - 1) * sharedCorrelation);
};

/**
 * The signs of one cause with what each adds to their log likelihood ratio, a line for each, which add up. Signs that share
 * marks err together, so they are not counted as if each were news.
 *
 * @param evidence - the signs that were read or seen
 * @returns the same signs in the same order
 * @source likelihood ratio of equally correlated normal readings, sum / (1 + (k - 1) r) (Kish 1965, design effect)
 */
export function countSigns(evidence: readonly Evidence[]): readonly Evidence[] {
  const groups = new Map<string, Evidence[]>();
  const nameOf = ({ sign }: Evidence, i: number) => sign.shares ?? `alone ${i}`;
  evidence.forEach((one, i) => {
    const name = nameOf(one, i);
    groups.set(name, [...(groups.get(name) ?? []), one]);
  });
  const counted = new Map([...groups].map(([name, signs]) => [name, countedAs(signs)]));
  return evidence.map((one, i) => {
    const { sign, weight, reading, answer } = one;
    return { sign, logRatio: one.logRatio * (counted.get(nameOf(one, i)) ?? 1), weight, reading, answer };
  });
}

/**
 * Log likelihood ratio of all signs of one cause.
 *
 * @returns natural logarithm, the sum of `countSigns`; 0 when there is none
 */
export const combineSigns = (evidence: readonly Evidence[]): number => sumOf(countSigns(evidence));
