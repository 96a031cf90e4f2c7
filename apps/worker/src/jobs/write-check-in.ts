import { tellCheckInDue } from '@ballfirst/services/mail/tell-check-in-due';
import { eventJob } from '../event-job.ts';

/** Asks the student for a fresh clip. */
export const writeCheckIn = eventJob({
  name: 'write-check-in',
  queue: 'prompt',
  on: 'check-in.due',
  handle: async ({ contextOf }, event) => {
    await tellCheckInDue({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, checkInId: event.payload.checkInId },
    });
  },
});
