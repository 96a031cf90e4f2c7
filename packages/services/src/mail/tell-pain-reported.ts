import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { studentInclude } from '../rows.ts';
import { painHeldLetter } from './letters/pain-held.ts';
import { sendToStaff } from './send-to-staff.ts';
import { type Told, toldNobody } from './send-to-student.ts';

/**
 * Tells coaches and managers of a swing that came with a pain (event submission.sent); of any other, nobody.
 * @throws ProblemError not-found
 */
export const tellPainReported = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; submissionId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const found = await inTransaction(ctx, async (tx) => {
    const submission = await tx.submission.findUnique({
      where: { academyId_id: { academyId, id: input.submissionId } },
      select: { id: true, pain: true, studentId: true, student: { include: studentInclude } },
    });
    if (submission === null) throw new ProblemError('not-found');
    const held = await tx.programme.count({
      where: { academyId, studentId: submission.studentId, status: 'held' },
    });
    return { ...submission, held: held > 0 };
  });
  if (found.pain === 'none') return toldNobody;
  const { academy, membership } = found.student;
  return sendToStaff(ctx, {
    eventId: input.eventId,
    kind: 'pain-reported',
    academyName: academy.name,
    letterFor: (name) =>
      painHeldLetter({
        name,
        studentName: membership.name,
        academyName: academy.name,
        held: found.held,
        page: { does: 'Open the swing', url: `${resources.publicUrl}/review/${found.id}` },
      }),
  });
};
