import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { emit } from '../outbox.ts';

/**
 * Sends a check-in whose instant has come: from here on it is open, and the event check-in.due brings the letter
 * (`tellCheckInDue`), so that one mailbox that fails holds up nobody else. A programme that is held, done or replaced
 * asks for nothing, nor is a student asked who has paused, left or lapsed: the check-in is cancelled.
 * @returns what it came to; 'nothing' when it was not due, or another run was first
 * @throws ProblemError not-found
 */
export const sendDueCheckIn = ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { checkInId: string };
}): Promise<{ outcome: 'sent' | 'cancelled' | 'nothing' }> => {
  requireSystem(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const where = { academyId_id: { academyId, id: input.checkInId } };
    await tx.$queryRaw`SELECT id FROM public.check_in
      WHERE academy_id = ${academyId}::uuid AND id = ${input.checkInId}::uuid FOR UPDATE`;
    const row = await tx.checkIn.findUnique({ where, include: { programme: true, student: true } });
    if (row === null) throw new ProblemError('not-found');
    if (row.status !== 'scheduled' || row.dueAt > now) return { outcome: 'nothing' };
    const subject = `check-in:${row.id}`;
    const goesOn = row.student.standing === 'trial' || row.student.standing === 'paid';
    if (row.programme.status !== 'open' || !goesOn) {
      await tx.checkIn.update({ where, data: { status: 'cancelled' } });
      await audit(tx, ctx, {
        action: 'cancel-check-in',
        subject,
        detail: { programme: row.programme.status, standing: row.student.standing },
      });
      return { outcome: 'cancelled' };
    }
    await tx.checkIn.update({ where, data: { status: 'sent', sentAt: now } });
    await audit(tx, ctx, { action: 'send-check-in', subject });
    await emit(tx, ctx, 'check-in.due', { checkInId: row.id });
    return { outcome: 'sent' };
  });
};
