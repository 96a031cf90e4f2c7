import { rollUpCorrected } from '@ballfirst/services/roll-ups/roll-up-corrected';
import { eventJob } from '../event-job.ts';

/** Counts a week again after the tally of one of its swings was put right. */
export const countCorrected = eventJob({
  name: 'count-corrected',
  queue: 'prompt',
  on: 'submission.corrected',
  handle: async ({ contextOf }, event) => {
    await rollUpCorrected({
      ctx: contextOf(event.academyId),
      input: { submissionId: event.payload.submissionId },
    });
  },
});
