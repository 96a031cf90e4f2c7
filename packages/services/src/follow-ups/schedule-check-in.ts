import { Plan } from '@ballfirst/contracts/http/review';
import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { onceEffect } from '../effects/once-effect.ts';
import { quietOf } from '../students/quiet-of.ts';
import { checkInTime } from './check-in-time.ts';

/**
 * Sets the first check-in of the programme that came with a reply (event reply.sent). It asks for a fresh clip.
 * @returns checkInId: null where the reply brought no programme, or the check-in stands already
 * @throws ProblemError not-found
 */
export const scheduleCheckIn = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; replyId: string };
}): Promise<{ checkInId: string | null }> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const checkInId = await onceEffect(
    ctx,
    { eventId: input.eventId, name: 'schedule-check-in' },
    async (tx) => {
      const reply = await tx.reply.findUnique({
        where: { academyId_id: { academyId, id: input.replyId } },
        include: { submission: { include: { student: { include: { membership: true } } } } },
      });
      if (reply === null) throw new ProblemError('not-found');
      const { programmeId, sentAt } = reply;
      if (programmeId === null || sentAt === null) return null;
      const { student } = reply.submission;
      const id = newId();
      await tx.checkIn.create({
        data: {
          academyId,
          id,
          studentId: student.id,
          programmeId,
          asks: 'clip',
          status: 'scheduled',
          ...checkInTime({
            sentAt,
            days: Plan.parse(reply.plan).firstCheckInDays,
            zone: student.membership.zone,
            quiet: quietOf(student),
          }),
        },
      });
      await audit(tx, ctx, { action: 'schedule-check-in', subject: `check-in:${id}` });
      return id;
    },
  );
  return { checkInId };
};
