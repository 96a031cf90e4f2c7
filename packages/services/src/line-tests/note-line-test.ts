import { localDate } from '@ballfirst/calendar/local-date';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requirePerson, requireReader } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { lockStudent } from '../students/lock-student.ts';
import { lineTestsOf } from './line-tests-of.ts';

/** Notes where the brushes of a line test began: the student's own, or by a coach beside. @throws ProblemError not-found */
export const noteLineTest = async ({ ctx, input }: Call<'noteLineTest'>): Promise<Reply<'noteLineTest'>> => {
  const { membershipId } = requirePerson(ctx);
  requireReader(ctx, input.id);
  return once(ctx, 'noteLineTest', async (tx) => {
    const { academyId } = ctx;
    const student = await lockStudent(tx, ctx, input.id);
    const now = ctx.resources.clock.now();
    const id = newId();
    await tx.lineTest.create({
      data: {
        ...{ academyId, id, studentId: student.id, byMembership: membershipId, startsMm: input.startsMm },
        ...{ localDate: localDate(now, student.membership.zone), at: now },
      },
    });
    await audit(tx, ctx, {
      action: 'note-line-test',
      subject: `student:${student.id}`,
      detail: { lineTest: id, brushes: input.startsMm.length },
    });
    return lineTestsOf(tx, ctx, student.id);
  });
};
