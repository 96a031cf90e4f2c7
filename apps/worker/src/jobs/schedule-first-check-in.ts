import { scheduleCheckIn } from '@ballfirst/services/follow-ups/schedule-check-in';
import { eventJob } from '../event-job.ts';

/** Sets the first check-in of a new programme. */
export const scheduleFirstCheckIn = eventJob({
  name: 'schedule-first-check-in',
  queue: 'prompt',
  on: 'reply.sent',
  handle: async ({ contextOf }, event) => {
    await scheduleCheckIn({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, replyId: event.payload.replyId },
    });
  },
});
