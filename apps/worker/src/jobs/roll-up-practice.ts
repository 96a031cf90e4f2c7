import { rollUpEntry } from '@ballfirst/services/roll-ups/roll-up-entry';
import { eventJob } from '../event-job.ts';

/** Adds a practice entry to its week. */
export const rollUpPractice = eventJob({
  name: 'roll-up-practice',
  queue: 'prompt',
  on: 'practice.logged',
  handle: async ({ contextOf }, event) => {
    await rollUpEntry({ ctx: contextOf(event.academyId), input: { entryId: event.payload.entryId } });
  },
});
