import { localMidnightEnd } from '@ballfirst/calendar/local-midnight-end';

/** A trial ends at the student's local midnight after its last day; the day it starts on is day 1. */
export const trialPeriod = (of: {
  readonly startedAt: Date;
  readonly days: number;
  readonly zone: string;
}): { trialStartedAt: Date; trialEndsAt: Date } => ({
  trialStartedAt: of.startedAt,
  trialEndsAt: localMidnightEnd(of),
});
