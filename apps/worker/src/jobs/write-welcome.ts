import { tellWelcome } from '@ballfirst/services/mail/tell-welcome';
import { eventJob } from '../event-job.ts';

/** A letter to whoever joined. */
export const writeWelcome = eventJob({
  name: 'write-welcome',
  queue: 'prompt',
  on: 'student.joined',
  handle: async ({ contextOf }, event) => {
    await tellWelcome({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, studentId: event.payload.studentId },
    });
  },
});
