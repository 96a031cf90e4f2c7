import { tellReset } from '@ballfirst/services/mail/tell-reset';
import { eventJob } from '../event-job.ts';

/** The link to a new password, to whoever asked for one. */
export const writeReset = eventJob({
  name: 'write-reset',
  queue: 'prompt',
  on: 'reset.asked',
  handle: async ({ contextOf }, event) => {
    await tellReset({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, membershipId: event.payload.membershipId },
    });
  },
});
