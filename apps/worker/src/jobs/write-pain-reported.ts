import { tellPainReported } from '@ballfirst/services/mail/tell-pain-reported';
import { eventJob } from '../event-job.ts';

/** Tells coaches and manager that a swing came with pain; silent for one without. */
export const writePainReported = eventJob({
  name: 'write-pain-reported',
  queue: 'prompt',
  on: 'submission.sent',
  handle: async ({ contextOf }, event) => {
    await tellPainReported({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, submissionId: event.payload.submissionId },
    });
  },
});
