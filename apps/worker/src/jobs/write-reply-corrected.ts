import { tellReplyCorrected } from '@ballfirst/services/mail/tell-reply-corrected';
import { eventJob } from '../event-job.ts';

/** Tells a student that a reply was corrected. */
export const writeReplyCorrected = eventJob({
  name: 'write-reply-corrected',
  queue: 'prompt',
  on: 'reply.corrected',
  handle: async ({ contextOf }, event) => {
    await tellReplyCorrected({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, ...event.payload },
    });
  },
});
