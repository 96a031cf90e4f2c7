import { aalenJohansen } from '@ballfirst/numbers/aalen-johansen';

/** One trial, as far as it has come. Instants; null: it has not happened. */
export type TrialCourse = {
  readonly startedAt: Date;
  readonly endsAt: Date;
  readonly paidAt: Date | null;
  readonly leftAt: Date | null;
};

export type Incidence = {
  readonly trials: number;
  /** Trials that may still become paid: they count as long as they have been followed. */
  readonly open: number;
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** The share by day of the trial, one step for each day on which something happened. */
  readonly steps: readonly { day: number; share: number; low: number; high: number }[];
};

/** Whoever has not joined so many days after the end has lapsed: who joins later counts as not joined, in every cohort alike. */
export const horizonDays = 7;
const dayMs = 86_400_000;

/**
 * Share of trials that become paid, by day. Leaving and lapsing end the waiting too; only trials that are still open count
 * as censored, so that recent joiners neither raise nor lower it.
 *
 * @returns null where no trial has come to an end of any kind
 * @throws RangeError on a trial that ends before it starts
 * @source Aalen & Johansen 1978 by way of numbers/aalen-johansen
 */
export const trialIncidence = (trials: readonly TrialCourse[], now: Date): Incidence | null => {
  const followed = trials.map((trial) => followOne(trial, now));
  if (followed.every(({ event }) => event === null)) return null;
  const steps = aalenJohansen(followed, 'paid').map(({ time, incidence, interval }) => ({
    day: time,
    share: incidence,
    low: interval.low,
    high: interval.high,
  }));
  const last = steps.at(-1);
  if (last === undefined) return null;
  const open = followed.filter(({ event }) => event === null).length;
  return { trials: trials.length, open, share: last.share, low: last.low, high: last.high, steps };
};

const followOne = ({ startedAt, endsAt, paidAt, leftAt }: TrialCourse, now: Date) => {
  if (endsAt < startedAt) throw new RangeError('A trial ends after it starts.');
  const judgedAt = new Date(endsAt.getTime() + horizonDays * dayMs);
  /** The day of the trial, the first one being 1. */
  const day = (at: Date): number => Math.floor((at.getTime() - startedAt.getTime()) / dayMs) + 1;
  const inTime = (at: Date | null): at is Date => at !== null && at >= startedAt && at <= judgedAt;
  if (inTime(paidAt) && !(inTime(leftAt) && leftAt < paidAt)) {
    return { time: day(paidAt), event: 'paid' as const };
  }
  if (inTime(leftAt)) return { time: day(leftAt), event: 'left' as const };
  if (judgedAt <= now) return { time: day(judgedAt), event: 'lapsed' as const };
  return { time: Math.max(1, day(now)), event: null };
};
