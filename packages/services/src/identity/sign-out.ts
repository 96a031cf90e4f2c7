import { closeSession } from '@ballfirst/db/crossings/close-session';
import { closeSessionsOfPerson } from '@ballfirst/db/crossings/close-sessions-of-person';
import type { Reply } from '../operation-types.ts';
import type { SignedInCall } from './call.ts';
import { tokenHash } from './session.ts';

/** Ends this session, or all sessions of the person. */
export const signOut = async ({
  resources,
  input,
  session,
}: SignedInCall<'signOut'>): Promise<Reply<'signOut'>> => {
  const now = resources.clock.now();
  if (input.everywhere) {
    await closeSessionsOfPerson(resources.db, { personId: session.actor.personId, now });
  } else {
    await closeSession(resources.db, { tokenHash: tokenHash(session.token), now });
  }
  return null;
};
