import { placeStudentAgain as place } from '@ballfirst/services/inbox/place-student-again';
import { eventJob } from '../event-job.ts';

/** Another standing is another place in the inbox for the swings that wait. */
export const placeStudentAgain = eventJob({
  name: 'place-student-again',
  queue: 'prompt',
  on: 'standing.changed',
  handle: async ({ contextOf }, event) => {
    await place({ ctx: contextOf(event.academyId), input: { studentId: event.payload.studentId } });
  },
});
