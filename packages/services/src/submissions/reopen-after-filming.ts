import { Pain, Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { SubmissionRow } from '../rows.ts';
import { placeSwing } from './place-swing.ts';

/** A swing filmed again takes a new place in the inbox: the promise counts from now. */
export const reopenAfterFilming = async (tx: Tx, ctx: Context, row: SubmissionRow): Promise<void> => {
  const { academyId } = ctx;
  const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
  const earlier = await tx.submission.count({
    where: { academyId, studentId: row.studentId, sentAt: { lt: row.sentAt } },
  });
  await tx.clip.updateMany({
    where: { academyId, submissionId: row.id, status: 'ready' },
    data: { refusal: null },
  });
  await tx.submission.update({
    where: { academyId_id: { academyId, id: row.id } },
    data: {
      status: 'preparing',
      version: { increment: 1 },
      ...(await placeSwing(tx, ctx, row.studentId, {
        submissionId: row.id,
        tally: Tally.parse(row.tally),
        pain: Pain.parse(row.pain),
        painAcknowledged: row.painSeenAt !== null,
        from: ctx.resources.clock.now(),
        academy,
        trialEnd: row.student.standing === 'trial' ? row.student.trialEndsAt : null,
        firstSwing: earlier === 0,
        checkIn: row.checkInId !== null,
      })),
    },
  });
};
