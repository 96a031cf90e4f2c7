import { tellInvitation } from '@ballfirst/services/mail/tell-invitation';
import { eventJob } from '../event-job.ts';

/** The link of an invitation, to whoever is invited. */
export const writeInvitation = eventJob({
  name: 'write-invitation',
  queue: 'prompt',
  on: 'invitation.made',
  handle: async ({ contextOf }, event) => {
    await tellInvitation({
      ctx: contextOf(event.academyId),
      input: { eventId: event.id, invitationId: event.payload.invitationId },
    });
  },
});
