import { tellNudge } from '@ballfirst/services/mail/tell-nudge';
import { eventJob } from '../event-job.ts';

/** A reminder to a student. */
export const writeNudge = eventJob({
  name: 'write-nudge',
  queue: 'prompt',
  on: 'nudge.due',
  handle: async ({ contextOf }, event) => {
    await tellNudge({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, nudgeId: event.payload.nudgeId },
    });
  },
});
