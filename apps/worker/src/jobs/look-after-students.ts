import { dueLookAfters } from '@ballfirst/db/crossings/due-look-afters';
import { lookAfterStudent } from '@ballfirst/services/follow-ups/look-after-student';
import { tickJob } from '../tick-job.ts';

/** The daily look at every student whose nine o'clock has come. */
export const lookAfterStudents = tickJob({
  name: 'look-after-students',
  queue: 'prompt',
  handle: async ({ resources, contextOf }) => {
    const now = resources.clock.now();
    for (const { academyId, studentId } of await dueLookAfters(resources.db, { now, limit: 500 })) {
      await lookAfterStudent({ ctx: contextOf(academyId), input: { studentId } });
    }
  },
});
