import { raisePain as raise } from '@ballfirst/services/inbox/raise-pain';
import { eventJob } from '../event-job.ts';

/** Puts a pain told while practising into the inbox; silent for an entry without. */
export const raisePain = eventJob({
  name: 'raise-pain',
  queue: 'prompt',
  on: 'practice.logged',
  handle: async ({ contextOf }, event) => {
    const input = { eventId: event.id, entryId: event.payload.entryId };
    await raise({ ctx: contextOf(event.academyId), input });
  },
});
