import { lapsedClaims } from '@ballfirst/db/crossings/lapsed-claims';
import { lapseClaim } from '@ballfirst/services/inbox/lapse-claim';
import { tickJob } from '../tick-job.ts';

/** Claims left alone past their end go back to the inbox. */
export const lapseClaims = tickJob({
  name: 'lapse-claims',
  queue: 'prompt',
  handle: async ({ resources, contextOf }) => {
    const now = resources.clock.now();
    for (const { academyId, submissionId } of await lapsedClaims(resources.db, { now, limit: 200 })) {
      await lapseClaim({ ctx: contextOf(academyId), input: { submissionId } });
    }
  },
});
