import { repliesWithoutStills } from '@ballfirst/db/crossings/replies-without-stills';
import { newId } from '@ballfirst/db/ids';
import { tickJob } from '../tick-job.ts';
import { drawSentReply } from './draw-sent-reply.ts';

/** So few at a time that a clip which somebody waits for comes between them. */
const atOnce = 8;

/** Refills the queue from the database: replies whose pictures were lost, or that are older than such pictures. */
export const reconcileStills = tickJob({
  name: 'reconcile-stills',
  queue: 'nightly',
  handle: async ({ resources, queues }) => {
    const lacking = await repliesWithoutStills(resources.db, { limit: atOnce });
    await queues.add(
      lacking.map(({ academyId, replyId, version }) => ({
        job: drawSentReply,
        data: { id: newId(), academyId, payload: { replyId } },
        id: `${replyId}.stills-${version}.${drawSentReply.name}`,
      })),
    );
  },
});
