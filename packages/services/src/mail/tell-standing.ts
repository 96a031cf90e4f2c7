import type { EventPayload } from '@ballfirst/contracts/events';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { nowPaidLetter } from './letters/now-paid.ts';
import { trialEndedLetter } from './letters/trial-ended.ts';
import { sendToStudent, type Told, toldNobody } from './send-to-student.ts';
import { studentToWriteTo } from './student-to-write-to.ts';

/**
 * Tells a student that the trial has ended, or thanks one who has become a paying student (event standing.changed).
 * Other changes, and one that was changed again meanwhile, bring no letter.
 * @throws ProblemError not-found
 */
export const tellStanding = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string } & EventPayload<'standing.changed'>;
}): Promise<Told> => {
  requireSystem(ctx);
  const { eventId, studentId, to } = input;
  if (to !== 'lapsed' && to !== 'paid') return toldNobody;
  const reader = await studentToWriteTo(ctx, studentId);
  if (reader === null || reader.student.standing !== to) return toldNobody;
  if (to === 'lapsed' && (await standingBefore(ctx, studentId)) !== 'trial') return toldNobody;
  const { academy, membership } = reader.student;
  const of = { name: membership.name, academyName: academy.name, publicUrl: ctx.resources.publicUrl };
  return to === 'lapsed'
    ? sendToStudent(ctx, {
        eventId,
        kind: 'trial-ended',
        reader,
        letter: trialEndedLetter({ ...of, priceWords: academy.priceWords }),
      })
    : sendToStudent(ctx, {
        eventId,
        kind: 'now-paid',
        reader,
        letter: nowPaidLetter({ ...of, promiseHours: academy.promiseHours }),
      });
};

const standingBefore = async (ctx: Context, studentId: string): Promise<string | null> => {
  const last = await inTransaction(ctx, (tx) =>
    tx.standingChange.findFirst({
      where: { academyId: ctx.academyId, studentId },
      orderBy: [{ at: 'desc' }, { id: 'desc' }],
    }),
  );
  return last?.fromStanding ?? null;
};
