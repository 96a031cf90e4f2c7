import { tellGuardian } from '@ballfirst/services/mail/tell-guardian';
import { eventJob } from '../event-job.ts';

/** The link of a consent, to the guardian. */
export const writeGuardian = eventJob({
  name: 'write-guardian',
  queue: 'prompt',
  on: 'guardian.asked',
  handle: async ({ contextOf }, event) => {
    await tellGuardian({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, consentId: event.payload.consentId },
    });
  },
});
