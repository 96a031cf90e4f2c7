import { faultById } from '@ballfirst/library/faults';
import type { FaultId } from '@ballfirst/library/types';
import { type Miss, usualCosts } from './lead-fault.ts';

/** Why a submission stands where it stands: data, put into words elsewhere. Instants are RFC 3339 in UTC. */
export type TriageReason =
  | { readonly kind: 'pain'; readonly pain: 'new' | 'worse' }
  | {
      readonly kind: 'fault';
      readonly fault: Miss;
      readonly probability: number;
      readonly headStartHours: number;
    }
  | { readonly kind: 'trial-ending'; readonly endsAt: string }
  | { readonly kind: 'promise'; readonly answerBy: string }
  | { readonly kind: 'old-fault' }
  | { readonly kind: 'stuck' }
  | { readonly kind: 'progress' }
  | { readonly kind: 'promise-at-risk' }
  | { readonly kind: 'first-swing' }
  | { readonly kind: 'check-in' };

export type TriageInput = {
  /** When the academy promised to answer; with pain, `painAnswerHours` working hours after it was sent. */
  readonly answerBy: Date;
  /** Length of the promise in working hours, > 0. */
  readonly promiseHours: number;
  readonly leadFault: { readonly fault: Miss; readonly probability: number } | null;
  readonly pain: 'none' | 'new' | 'worse';
  readonly painAcknowledged: boolean;
  readonly trialEnd: Date | null;
  /** Working hours of a usual day, > 0. */
  readonly workingDayHours: number;
  readonly firstSwing: boolean;
  readonly checkIn: boolean;
  /** The fault an open programme works on: its opposite miss is progress and raises nothing. */
  readonly openProgrammeFault?: FaultId | null;
  /** A fault that a finished programme had mended is back. */
  readonly oldFaultBack?: boolean;
  /** Practice that stays where it is in spite of trying. */
  readonly stuck?: boolean;
  /** What waits before it is more than can be answered until then. */
  readonly promiseAtRisk?: boolean;
  /** The instant from which so many working hours still pass until `instant`. */
  readonly workBefore: (instant: Date, hours: number) => Date;
};

export type Triage = {
  /** The stored order of the inbox, earliest first. */
  readonly key: Date;
  readonly headStartHours: number;
  /** New or worse pain that no coach has seen yet. */
  readonly pinned: boolean;
  readonly reasons: readonly TriageReason[];
};

/** New or worse pain is answered within so many working hours. */
export const painAnswerHours = 4;

/** A trial's swing is due so many working days before it ends. */
const daysBeforeTrialEnd = 2;
// Pinned rows sort before all others and among themselves by their promise: a hundred years earlier.
const pinnedShiftMs = 36_525 * 86_400_000;

/** What an old fault that is back, or practice that is stuck, adds, of the whole head start. Common practice, no source. */
const raisedBy = 0.25;
const dearest = Math.max(...Object.values(usualCosts));

/** The opposite miss of the fault that an open programme works on: the drill works. */
function isProgress({ leadFault, openProgrammeFault = null }: TriageInput): boolean {
  return (
    leadFault !== null &&
    openProgrammeFault !== null &&
    faultById(openProgrammeFault).oppositeMiss === leadFault.fault
  );
}

/** Head start in working hours: up to half the promise, by what the fault costs and how sure we are of it. */
function headStart(input: TriageInput): number {
  const { leadFault, promiseHours, oldFaultBack = false, stuck = false } = input;
  const counted = leadFault !== null && !isProgress(input);
  const cost = counted ? (usualCosts[leadFault.fault] / dearest) * leadFault.probability : 0;
  const raised = cost + (oldFaultBack ? raisedBy : 0) + (stuck ? raisedBy : 0);
  return (promiseHours / 2) * Math.min(1, raised);
}

/**
 * Where a submission stands in the inbox: its answer-by less a head start, or two working days before its trial ends,
 * whichever is earlier, but never before it was sent. So only what is sent within its promise can overtake it, and nobody
 * starves.
 *
 * @throws RangeError when the promise or the working day is not longer than zero
 * @source earliest due date with a bounded head start; half the promise is common practice, no source
 */
export function triageKey(input: TriageInput): Triage {
  const { answerBy, promiseHours, leadFault, pain, trialEnd, workingDayHours, workBefore } = input;
  if (!(promiseHours > 0)) throw new RangeError('A promise is longer than zero hours.');
  if (!(workingDayHours > 0)) throw new RangeError('A working day is longer than zero hours.');
  const headStartHours = headStart(input);
  const promised = workBefore(answerBy, headStartHours);
  const sent = workBefore(answerBy, promiseHours);
  const trial = trialEnd === null ? null : workBefore(trialEnd, daysBeforeTrialEnd * workingDayHours);
  const trialFirst = trial !== null && trial < promised;
  const due = trialFirst ? new Date(Math.max(trial.getTime(), sent.getTime())) : promised;
  const pinned = pain !== 'none' && !input.painAcknowledged;

  const reasons: TriageReason[] = [];
  if (pain !== 'none') reasons.push({ kind: 'pain', pain });
  if (trialFirst && trialEnd !== null) reasons.push({ kind: 'trial-ending', endsAt: trialEnd.toISOString() });
  if (input.promiseAtRisk === true) reasons.push({ kind: 'promise-at-risk' });
  if (input.oldFaultBack === true) reasons.push({ kind: 'old-fault' });
  if (input.stuck === true) reasons.push({ kind: 'stuck' });
  if (isProgress(input)) reasons.push({ kind: 'progress' });
  else if (leadFault !== null && headStartHours > 0)
    reasons.push({ kind: 'fault', ...leadFault, headStartHours });
  if (input.firstSwing) reasons.push({ kind: 'first-swing' });
  if (input.checkIn) reasons.push({ kind: 'check-in' });
  reasons.push({ kind: 'promise', answerBy: answerBy.toISOString() });
  return { key: pinned ? new Date(due.getTime() - pinnedShiftMs) : due, headStartHours, pinned, reasons };
}
