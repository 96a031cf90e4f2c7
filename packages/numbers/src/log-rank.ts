import { eventTable, type Followed } from './event-table.ts';
import { normalCdf } from './normal-cdf.ts';

export type LogRank = {
  readonly observed: number;
  readonly expected: number;
  readonly variance: number;
  readonly chiSquare: number;
  readonly p: number;
};

/**
 * Whether two groups that were formed at entry differ in when the event comes.
 *
 * @returns observed and expected events of the first group, chi-square on one degree of freedom
 * @throws RangeError on an empty group, a time out of range, or no event at which both groups are at risk
 * @source Mantel 1966; Peto & Peto 1972 (hypergeometric variance)
 * @example logRank(treated, untreated).chiSquare
 */
export function logRank(first: readonly Followed[], second: readonly Followed[]): LogRank {
  if (first.length === 0 || second.length === 0) throw new RangeError('Both groups need somebody.');
  const own = new Map(eventTable(first).map((row) => [row.time, row]));
  const times = first.map(({ time }) => time).sort((a, b) => a - b);
  let observed = 0;
  let expected = 0;
  let variance = 0;
  let gone = 0;
  for (const { time, atRisk: n, events: d } of eventTable([...first, ...second])) {
    while (gone < times.length && (times[gone] ?? time) < time) gone += 1;
    const n1 = times.length - gone;
    observed += own.get(time)?.events ?? 0;
    expected += (d * n1) / n;
    if (n > 1) variance += (d * (n1 / n) * (1 - n1 / n) * (n - d)) / (n - 1);
  }
  if (!(variance > 0)) throw new RangeError('The groups never stood at risk together.');
  const chiSquare = (observed - expected) ** 2 / variance;
  return { observed, expected, variance, chiSquare, p: 2 * normalCdf(-Math.sqrt(chiSquare)) };
}
