import { ProblemError } from '@ballfirst/contracts/problems';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { studentInclude } from '../rows.ts';
import { joinAskedLetter } from './letters/join-asked.ts';
import { sendToStaff } from './send-to-staff.ts';
import type { Told } from './send-to-student.ts';

/** Tells the managers that a student would like to join (event join.asked). @throws ProblemError not-found */
export const tellJoinAsked = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; studentId: string };
}): Promise<Told> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const student = await inTransaction(ctx, (tx) =>
    tx.student.findUnique({
      where: { academyId_id: { academyId, id: input.studentId } },
      include: studentInclude,
    }),
  );
  if (student === null) throw new ProblemError('not-found');
  return sendToStaff(ctx, {
    eventId: input.eventId,
    kind: 'join-asked',
    academyName: student.academy.name,
    roles: ['manager'],
    letterFor: (name) =>
      joinAskedLetter({
        name,
        studentName: student.membership.name,
        academyName: student.academy.name,
        url: `${resources.publicUrl}/students/${student.id}`,
      }),
  });
};
