import { tellPainHeld } from '@ballfirst/services/mail/tell-pain-held';
import { eventJob } from '../event-job.ts';

/** Tells coaches and manager that practice is on hold. */
export const writePainHeld = eventJob({
  name: 'write-pain-held',
  queue: 'prompt',
  on: 'practice.held',
  handle: async ({ contextOf }, event) => {
    await tellPainHeld({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, programmeId: event.payload.programmeId },
    });
  },
});
