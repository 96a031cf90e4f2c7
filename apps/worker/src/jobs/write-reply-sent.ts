import { tellReplySent } from '@ballfirst/services/mail/tell-reply-sent';
import { eventJob } from '../event-job.ts';

/** Tells the student that the reply is there. */
export const writeReplySent = eventJob({
  name: 'write-reply-sent',
  queue: 'prompt',
  on: 'reply.sent',
  handle: async ({ contextOf }, event) => {
    await tellReplySent({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, replyId: event.payload.replyId },
    });
  },
});
