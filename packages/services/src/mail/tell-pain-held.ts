import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import type { HoldReason } from '../practice/hold-practice.ts';
import { studentInclude } from '../rows.ts';
import { painHeldLetter } from './letters/pain-held.ts';
import { sendToStaff } from './send-to-staff.ts';
import { type Told, toldNobody } from './send-to-student.ts';

const inPractice: HoldReason = 'pain-in-practice';

/**
 * Tells coaches and managers that a programme was put on hold by a pain in practice (event practice.held). A pain that
 * came with a swing is told by `tellPainReported` (event submission.sent), so that nobody reads of it twice.
 * @throws ProblemError not-found
 */
export const tellPainHeld = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; programmeId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const programme = await inTransaction(ctx, (tx) =>
    tx.programme.findUnique({
      where: { academyId_id: { academyId, id: input.programmeId } },
      include: { student: { include: studentInclude } },
    }),
  );
  if (programme === null) throw new ProblemError('not-found');
  if (programme.holdReason !== inPractice) return toldNobody;
  const { academy, membership, id } = programme.student;
  return sendToStaff(ctx, {
    eventId: input.eventId,
    kind: 'pain-held',
    academyName: academy.name,
    letterFor: (name) =>
      painHeldLetter({
        name,
        studentName: membership.name,
        academyName: academy.name,
        held: true,
        page: { does: 'Open the student', url: `${resources.publicUrl}/students/${id}` },
      }),
  });
};
