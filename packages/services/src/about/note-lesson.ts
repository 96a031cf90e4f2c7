import { localDate } from '@ballfirst/calendar/local-date';
import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { lockStudent } from '../students/lock-student.ts';
import { aboutStudent } from './about-student.ts';

/** Notes a lesson given in person, on a day that has come where the student is. @throws ProblemError not-found, bad-request */
export const noteLesson = async ({ ctx, input }: Call<'noteLesson'>): Promise<Reply<'noteLesson'>> => {
  const { membershipId } = requireStaff(ctx);
  return once(ctx, 'noteLesson', async (tx) => {
    const { academyId } = ctx;
    const student = await lockStudent(tx, ctx, input.id);
    const now = ctx.resources.clock.now();
    if (input.localDate > localDate(now, student.membership.zone)) {
      const message = 'That day has not come yet. Note the lesson when it was given.';
      throw new ProblemError('bad-request', message, [{ path: 'localDate', message }]);
    }
    const id = newId();
    await tx.lesson.create({
      data: {
        ...{ academyId, id, studentId: student.id, byMembership: membershipId, at: now },
        ...{ localDate: input.localDate, words: input.words },
      },
    });
    await audit(tx, ctx, { action: 'note-lesson', subject: `student:${student.id}`, detail: { lesson: id } });
    return aboutStudent(tx, ctx, student.id);
  });
};
