import { listAcademies } from '@ballfirst/db/crossings/list-academies';
import { raiseTrialEndings as raise } from '@ballfirst/services/inbox/raise-trial-endings';
import { tickJob } from '../tick-job.ts';

/** Trials about to end unheard come before the coaches. */
export const raiseTrialEndings = tickJob({
  name: 'raise-trial-endings',
  queue: 'prompt',
  handle: async ({ resources, contextOf, signal }) => {
    for (const { id } of await listAcademies(resources.db)) {
      if (signal.aborted) return;
      await raise({ ctx: contextOf(id) });
    }
  },
});
