import { tellClipRefused } from '@ballfirst/services/mail/tell-clip-refused';
import { eventJob } from '../event-job.ts';

/** Says why a clip was refused and what to do; silent for one that is ready. */
export const writeClipRefused = eventJob({
  name: 'write-clip-refused',
  queue: 'prompt',
  on: 'clip.prepared',
  handle: async ({ contextOf }, event) => {
    await tellClipRefused({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, clipId: event.payload.clipId },
    });
  },
});
