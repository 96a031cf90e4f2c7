import { dueCheckIns } from '@ballfirst/db/crossings/due-check-ins';
import { sendDueCheckIn } from '@ballfirst/services/follow-ups/send-due-check-in';
import { tickJob } from '../tick-job.ts';

/** Check-ins whose hour has come on the student's wall clock. */
export const sendCheckIns = tickJob({
  name: 'send-check-ins',
  queue: 'prompt',
  handle: async ({ resources, contextOf }) => {
    const now = resources.clock.now();
    for (const { academyId, checkInId } of await dueCheckIns(resources.db, { now, limit: 500 })) {
      await sendDueCheckIn({ ctx: contextOf(academyId), input: { checkInId } });
    }
  },
});
