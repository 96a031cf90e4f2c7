import { tellJoinAsked } from '@ballfirst/services/mail/tell-join-asked';
import { eventJob } from '../event-job.ts';

/** Tells the managers that somebody would like to join. */
export const writeJoinAsked = eventJob({
  name: 'write-join-asked',
  queue: 'prompt',
  on: 'join.asked',
  handle: async ({ contextOf }, event) => {
    await tellJoinAsked({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, studentId: event.payload.studentId },
    });
  },
});
