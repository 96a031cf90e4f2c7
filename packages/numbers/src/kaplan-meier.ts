import { eventTable, type Followed } from './event-table.ts';
import { normalQuantile } from './normal-quantile.ts';
import type { Interval } from './wilson-interval.ts';

export type SurvivalStep = {
  readonly time: number;
  readonly atRisk: number;
  readonly events: number;
  /** Share without the event after this time. */
  readonly survival: number;
  /** Greenwood's standard error; 0 once nobody is left. */
  readonly se: number;
  readonly interval: Interval;
};

/**
 * Share still without an event, when some are followed for a shorter time than others. Whatever happened counts as the
 * event; where several compete use `aalenJohansen`.
 *
 * @param followed - at least one person
 * @param level - confidence of the log-log intervals, strictly between 0 and 1
 * @returns one step for each time at which something happened
 * @throws RangeError on nobody or a time that is not finite and >= 0
 * @source Kaplan & Meier 1958; Greenwood 1926; log-log interval: Kalbfleisch & Prentice 1980
 * @example kaplanMeier([{ time: 6, event: 'relapse' }, { time: 9, event: null }])
 */
export function kaplanMeier(followed: readonly Followed[], level = 0.95): readonly SurvivalStep[] {
  if (!(level > 0 && level < 1)) throw new RangeError('A level lies strictly between 0 and 1.');
  const z = normalQuantile((1 + level) / 2);
  let survival = 1;
  let sum = 0;
  return eventTable(followed).map(({ time, atRisk, events }) => {
    survival *= 1 - events / atRisk;
    sum += events < atRisk ? events / (atRisk * (atRisk - events)) : 0;
    const se = survival * Math.sqrt(sum);
    return { time, atRisk, events, survival, se, interval: logLogInterval(survival, se, z) };
  });
}

/** Limits on the scale log(-log S), which stay within 0..1. */
export function logLogInterval(share: number, se: number, z: number): Interval {
  if (share <= 0 || share >= 1 || se === 0) return { low: share, high: share };
  const spread = (z * se) / Math.abs(share * Math.log(share));
  return { low: share ** Math.exp(spread), high: share ** Math.exp(-spread) };
}

/** First time at which half or fewer are left without the event; null while more than half are. */
export const medianSurvival = (steps: readonly SurvivalStep[]): number | null =>
  steps.find(({ survival }) => survival <= 0.5)?.time ?? null;
