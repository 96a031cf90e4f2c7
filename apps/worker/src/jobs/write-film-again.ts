import { tellFilmAgain } from '@ballfirst/services/mail/tell-film-again';
import { eventJob } from '../event-job.ts';

/** Asks the student for a better clip. */
export const writeFilmAgain = eventJob({
  name: 'write-film-again',
  queue: 'prompt',
  on: 'submission.film-again',
  handle: async ({ contextOf }, event) => {
    await tellFilmAgain({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, submissionId: event.payload.submissionId },
    });
  },
});
