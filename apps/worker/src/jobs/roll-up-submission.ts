import { rollUpSwing } from '@ballfirst/services/roll-ups/roll-up-swing';
import { eventJob } from '../event-job.ts';

/** Adds a swing and its tally to its week. */
export const rollUpSubmission = eventJob({
  name: 'roll-up-submission',
  queue: 'prompt',
  on: 'submission.sent',
  handle: async ({ contextOf }, event) => {
    await rollUpSwing({
      ctx: contextOf(event.academyId),
      input: { submissionId: event.payload.submissionId },
    });
  },
});
