import { addWorkingHours } from '@ballfirst/calendar/add-working-hours';
import { workBefore } from '@ballfirst/calendar/work-before';
import type { Tally } from '@ballfirst/contracts/words';
import { leadFault } from '@ballfirst/diagnosis/lead-fault';
import { painAnswerHours, triageKey } from '@ballfirst/diagnosis/triage-key';
import type { FaultId } from '@ballfirst/library/types';
import { workingDayHours, workingHoursOf } from '../academy/working-hours-of.ts';
import { tallied } from './check-tally.ts';

/** What lies behind a swing and before it: its student's practice, and how much waits until its promise. */
export type TriageHistory = {
  /** The fault an open programme works on; its opposite miss is progress. */
  readonly openProgrammeFault: FaultId | null;
  /** Faults that finished programmes had mended. */
  readonly mendedFaults: readonly FaultId[];
  readonly stuck: boolean;
  readonly promiseAtRisk: boolean;
};

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
  /** Absent: nothing is known but the swing itself. */
  readonly history?: TriageHistory;
};

/** The same submission always draws the same: the seed is the random end of its id. */
const seedOf = (id: string): number => Number.parseInt(id.slice(-8), 16);

const promisedHours = ({ pain, academy }: Pick<TriageFacts, 'pain' | 'academy'>): number =>
  pain === 'none' ? academy.promiseHours : Math.min(painAnswerHours, academy.promiseHours);

/** By when it is answered: as promised before, else so many working hours after it was sent. */
export const answerByOf = (facts: Pick<TriageFacts, 'pain' | 'academy' | 'from' | 'promisedBy'>): Date =>
  facts.promisedBy ?? addWorkingHours(facts.from, promisedHours(facts), workingHoursOf(facts.academy));

/** Where a submission stands in the inbox and why: all that is stored about its place. */
export const triageOf = (facts: TriageFacts) => {
  const { tally, pain, academy, history } = facts;
  const working = workingHoursOf(academy);
  const counts = Object.fromEntries(tallied.map((kind) => [kind, tally[kind]]));
  const lead = leadFault(counts, seedOf(facts.submissionId));
  const answerBy = answerByOf(facts);
  const triage = triageKey({
    answerBy,
    promiseHours: promisedHours(facts),
    leadFault: lead,
    pain,
    painAcknowledged: facts.painAcknowledged,
    trialEnd: facts.trialEnd,
    workingDayHours: workingDayHours(working),
    firstSwing: facts.firstSwing,
    checkIn: facts.checkIn,
    openProgrammeFault: history?.openProgrammeFault ?? null,
    oldFaultBack: lead !== null && (history?.mendedFaults ?? []).some((fault) => fault === lead.fault),
    stuck: history?.stuck ?? false,
    promiseAtRisk: history?.promiseAtRisk ?? false,
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
