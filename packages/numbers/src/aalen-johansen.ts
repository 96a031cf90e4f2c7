import { eventTable, type Followed } from './event-table.ts';
import { logLogInterval } from './kaplan-meier.ts';
import { normalQuantile } from './normal-quantile.ts';
import type { Interval } from './wilson-interval.ts';

export type IncidenceStep = {
  readonly time: number;
  readonly atRisk: number;
  /** Share for whom this event has come by this time. */
  readonly incidence: number;
  readonly se: number;
  readonly interval: Interval;
};

type Jump = {
  readonly share: number;
  readonly survivalBefore: number;
  readonly atRisk: number;
  readonly all: number;
  readonly own: number;
};

/** Variance at the last of the jumps. */
function varianceOf(jumps: readonly Jump[], incidence: number): number {
  let sum = 0;
  for (const { share, survivalBefore: s, atRisk: n, all, own } of jumps) {
    const later = incidence - share;
    if (all < n) sum += (later ** 2 * all) / (n * (n - all));
    sum += (s ** 2 * own * (n - own)) / n ** 3;
    sum -= (2 * later * s * own) / n ** 2;
  }
  return Math.max(0, sum);
}

/**
 * Share for whom one event has come by each time, when other events end the waiting too. Only who is still open counts
 * as censored.
 *
 * @param followed - at least one person, with the event that ended the waiting or null
 * @param event - the event asked for
 * @param level - confidence of the log-log intervals, strictly between 0 and 1
 * @returns one step for each time at which any event came
 * @throws RangeError on nobody, more than 5,000 times, or a time out of range
 * @source Aalen & Johansen 1978; variance by the delta method (Marubini & Valsecchi 1995, equation 10.12)
 * @example aalenJohansen([{ time: 5, event: 'paid' }, { time: 7, event: 'left' }], 'paid').at(-1)?.incidence // 0.5
 */
export function aalenJohansen<Event extends string>(
  followed: readonly Followed<Event>[],
  event: Event,
  level = 0.95,
): readonly IncidenceStep[] {
  if (!(level > 0 && level < 1)) throw new RangeError('A level lies strictly between 0 and 1.');
  const z = normalQuantile((1 + level) / 2);
  const rows = eventTable(followed);
  if (rows.length > 5000) throw new RangeError('Round the times: more than 5,000 differ.');
  const jumps: Jump[] = [];
  let survival = 1;
  let incidence = 0;
  return rows.map(({ time, atRisk, events, byEvent }) => {
    const own = byEvent.get(event) ?? 0;
    incidence += (survival * own) / atRisk;
    jumps.push({ share: incidence, survivalBefore: survival, atRisk, all: events, own });
    survival *= 1 - events / atRisk;
    const se = Math.sqrt(varianceOf(jumps, incidence));
    return { time, atRisk, incidence, se, interval: logLogInterval(incidence, se, z) };
  });
}
