import { drawReply } from '../draw-reply.ts';
import { eventJob } from '../event-job.ts';

/** Draws the frames of a reply that went out, with the marks in them. */
export const drawSentReply = eventJob({
  name: 'draw-sent-reply',
  queue: 'media',
  on: 'reply.sent',
  handle: (given, event) => drawReply(given, event.academyId, event.payload.replyId),
});
