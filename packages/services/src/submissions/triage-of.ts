import { addWorkingHours } from '@ballfirst/calendar/add-working-hours';
import { workBefore } from '@ballfirst/calendar/work-before';
import type { Tally } from '@ballfirst/contracts/words';
import { leadFault } from '@ballfirst/diagnosis/lead-fault';
import { painAnswerHours, triageKey } from '@ballfirst/diagnosis/triage-key';
import { workingDayHours, workingHoursOf } from '../academy/working-hours-of.ts';
import { tallied } from './check-tally.ts';

export type TriageFacts = {
  readonly submissionId: string;
  readonly tally: Tally;
  readonly pain: 'none' | 'new' | 'worse';
  readonly painAcknowledged: boolean;
  /** From here the promise counts. */
  readonly from: Date;
  /** The promise already given, which a correction keeps. */
  readonly promisedBy?: Date;
  readonly academy: {
    readonly zone: string;
    readonly workingHours: unknown;
    readonly promiseHours: number;
  };
  readonly trialEnd: Date | null;
  readonly firstSwing: boolean;
  readonly checkIn: boolean;
};

/** The same submission always draws the same: the seed is the random end of its id. */
const seedOf = (id: string): number => Number.parseInt(id.slice(-8), 16);

/** Where a submission stands in the inbox and why: all that is stored about its place. */
export const triageOf = (facts: TriageFacts) => {
  const { tally, pain, from, academy } = facts;
  const working = workingHoursOf(academy);
  const counts = Object.fromEntries(tallied.map((kind) => [kind, tally[kind]]));
  const lead = leadFault(counts, seedOf(facts.submissionId));
  const promised = pain === 'none' ? academy.promiseHours : Math.min(painAnswerHours, academy.promiseHours);
  const answerBy = facts.promisedBy ?? addWorkingHours(from, promised, working);
  const triage = triageKey({
    answerBy,
    promiseHours: promised,
    leadFault: lead,
    pain,
    painAcknowledged: facts.painAcknowledged,
    trialEnd: facts.trialEnd,
    workingDayHours: workingDayHours(working),
    firstSwing: facts.firstSwing,
    checkIn: facts.checkIn,
    workBefore: (instant, hours) => workBefore(instant, hours, working),
  });
  return {
    answerBy,
    leadFault: lead?.fault ?? null,
    priorityKey: triage.key,
    headStartHours: triage.headStartHours,
    reasons: triage.reasons.map((reason) => ({ ...reason })),
  };
};
