import { drawReply } from '../draw-reply.ts';
import { eventJob } from '../event-job.ts';

/** Draws them again after a correction: a mark may have been put right before it. */
export const drawCorrectedReply = eventJob({
  name: 'draw-corrected-reply',
  queue: 'media',
  on: 'reply.corrected',
  handle: (given, event) => drawReply(given, event.academyId, event.payload.replyId),
});
