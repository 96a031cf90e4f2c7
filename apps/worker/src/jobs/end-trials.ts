import { dueTrialEnds } from '@ballfirst/db/crossings/due-trial-ends';
import { endTrial } from '@ballfirst/services/follow-ups/end-trial';
import { tickJob } from '../tick-job.ts';

/** Trials whose last local midnight has passed. */
export const endTrials = tickJob({
  name: 'end-trials',
  queue: 'prompt',
  handle: async ({ resources, contextOf }) => {
    const now = resources.clock.now();
    for (const { academyId, studentId } of await dueTrialEnds(resources.db, { now, limit: 500 })) {
      await endTrial({ ctx: contextOf(academyId), input: { studentId } });
    }
  },
});
