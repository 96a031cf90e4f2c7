import { Pain, type Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import type { SubmissionRow } from '../rows.ts';
import { placeSwing } from './place-swing.ts';

/** The place in the inbox of a swing whose tally was put right. The promise stays as it was given. */
export const placeAgain = async (tx: Tx, ctx: Context, row: SubmissionRow, tally: Tally) => {
  const { academyId } = ctx;
  const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
  const earlier = await tx.submission.count({
    where: { academyId, studentId: row.studentId, sentAt: { lt: row.sentAt } },
  });
  return placeSwing(tx, ctx, row.studentId, {
    submissionId: row.id,
    tally,
    pain: Pain.parse(row.pain),
    painAcknowledged: row.painSeenAt !== null,
    from: row.sentAt,
    promisedBy: row.answerBy,
    academy,
    trialEnd: row.student.standing === 'trial' ? row.student.trialEndsAt : null,
    firstSwing: earlier === 0,
    checkIn: row.checkInId !== null,
  });
};
