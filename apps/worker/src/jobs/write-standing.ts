import { tellStanding } from '@ballfirst/services/mail/tell-standing';
import { eventJob } from '../event-job.ts';

/** Tells the student what changed in their standing. */
export const writeStanding = eventJob({
  name: 'write-standing',
  queue: 'prompt',
  on: 'standing.changed',
  handle: async ({ contextOf }, event) => {
    await tellStanding({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, studentId: event.payload.studentId, to: event.payload.to },
    });
  },
});
