import { dueReplies } from '@ballfirst/db/crossings/due-replies';
import { finishReply } from '@ballfirst/services/review/finish-reply';
import { tickJob } from '../tick-job.ts';

/** Replies whose half minute for second thoughts is over. */
export const finishReplies = tickJob({
  name: 'finish-replies',
  queue: 'prompt',
  handle: async ({ resources, contextOf }) => {
    const now = resources.clock.now();
    for (const { academyId, replyId } of await dueReplies(resources.db, { now, limit: 500 })) {
      await finishReply({ ctx: contextOf(academyId), input: { replyId } });
    }
  },
});
