import { tellQuestionAnswered } from '@ballfirst/services/mail/tell-question-answered';
import { eventJob } from '../event-job.ts';

/** Tells a student that a question was answered. */
export const writeQuestionAnswered = eventJob({
  name: 'write-question-answered',
  queue: 'prompt',
  on: 'question.answered',
  handle: async ({ contextOf }, event) => {
    await tellQuestionAnswered({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, questionId: event.payload.questionId },
    });
  },
});
