import { ProblemError } from '@ballfirst/contracts/problems';
import { requirePerson } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { instantPlaceOf, pageOf } from '../keyset.ts';
import type { Call, Reply } from '../operation-types.ts';
import { submissionInclude } from '../rows.ts';
import { submissionOf } from './submission-of.ts';

/** A student's own submissions, or for a coach one student's or everybody's; newest first. */
export const listSubmissions = async ({
  ctx,
  input,
}: Call<'listSubmissions'>): Promise<Reply<'listSubmissions'>> => {
  const actor = requirePerson(ctx);
  const studentId = actor.role === 'student' ? actor.studentId : (input.studentId ?? null);
  if (actor.role === 'student' && input.studentId !== undefined && input.studentId !== actor.studentId) {
    throw new ProblemError('not-found');
  }
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    if (studentId !== null) {
      const student = await tx.student.findUnique({ where: { academyId_id: { academyId, id: studentId } } });
      if (student === null) throw new ProblemError('not-found');
    }
    const after = input.after === undefined ? null : instantPlaceOf(input.after);
    const rows = await tx.submission.findMany({
      where: {
        academyId,
        ...(studentId === null ? {} : { studentId }),
        ...(after === null
          ? {}
          : { OR: [{ sentAt: { lt: after.key } }, { sentAt: after.key, id: { lt: after.id } }] }),
      },
      include: submissionInclude,
      orderBy: [{ sentAt: 'desc' }, { id: 'desc' }],
      take: input.limit + 1,
    });
    const page = pageOf(rows, input.limit, (row) => ({ key: row.sentAt.toISOString(), id: row.id }));
    const now = ctx.resources.clock.now();
    return { items: page.items.map((row) => submissionOf(row, now)), next: page.next };
  });
};
