import { addWorkingHours } from '@ballfirst/calendar/add-working-hours';
import { workBefore } from '@ballfirst/calendar/work-before';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import { painAnswerHours, triageKey } from '@ballfirst/diagnosis/triage-key';
import { workingDayHours, workingHoursOf } from '../academy/working-hours-of.ts';
import { audit } from '../audit.ts';
import type { Context } from '../context.ts';
import { emit } from '../outbox.ts';

export type NewConcern = {
  readonly kind: 'pain' | 'trial-ending' | 'question' | 'stuck';
  readonly subjectId: string;
  readonly programmeId: string | null;
  readonly pain: 'none' | 'new' | 'worse';
  /** What the student asks, word for word. */
  readonly words?: string;
  readonly student: { readonly id: string; readonly standing: string; readonly trialEndsAt: Date | null };
  readonly academy: {
    readonly zone: string;
    readonly workingHours: unknown;
    readonly promiseHours: number;
  };
};

/** Its place by the same rule as a swing's; a trial is spoken about before it ends, whatever the promise. */
const placeOf = (it: NewConcern, now: Date) => {
  const working = workingHoursOf(it.academy);
  const { promiseHours } = it.academy;
  const promised = it.pain === 'none' ? promiseHours : Math.min(painAnswerHours, promiseHours);
  const { trialEndsAt, standing } = it.student;
  const trialEnd = standing === 'trial' ? trialEndsAt : null;
  const promise = addWorkingHours(now, promised, working);
  const answerBy = trialEnd !== null && trialEnd < promise && trialEnd > now ? trialEnd : promise;
  const { key, reasons } = triageKey({
    ...{
      answerBy,
      promiseHours: promised,
      leadFault: null,
      pain: it.pain,
      painAcknowledged: false,
      trialEnd,
    },
    ...{ workingDayHours: workingDayHours(working), firstSwing: false, checkIn: false },
    workBefore: (instant, hours) => workBefore(instant, hours, working),
  });
  return { answerBy, priorityKey: key, reasons: reasons.map((reason) => ({ ...reason })) };
};

/** Puts a concern into the inbox unless it waits there already. @returns its id, null when it did */
export const raiseConcern = async (tx: Tx, ctx: Context, it: NewConcern): Promise<string | null> => {
  const { academyId } = ctx;
  const now = ctx.resources.clock.now();
  const id = newId();
  const { count } = await tx.concern.createMany({
    data: {
      ...{ academyId, id, studentId: it.student.id, kind: it.kind, subjectId: it.subjectId },
      ...{
        programmeId: it.programmeId,
        pain: it.pain,
        words: it.words ?? '',
        status: 'waiting',
        raisedAt: now,
      },
      ...placeOf(it, now),
      version: 1,
    },
    skipDuplicates: true,
  });
  if (count === 0) return null;
  await audit(tx, ctx, { action: 'raise-concern', subject: `concern:${id}`, detail: { kind: it.kind } });
  await emit(tx, ctx, 'concern.raised', { concernId: id });
  return id;
};
